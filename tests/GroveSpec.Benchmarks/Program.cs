using GroveSpec.Benchmarks;

return args.Contains("--ground") ? GroundAgreement.Run(args, Console.Out) : args.Contains("--server") ? ServerComparison.Run(args, Console.Out) : Comparison.Run(args, Console.Out);
