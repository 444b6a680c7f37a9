using GroveSpec.Benchmarks;

return args.Contains("--server") ? ServerComparison.Run(args, Console.Out) : Comparison.Run(args, Console.Out);
