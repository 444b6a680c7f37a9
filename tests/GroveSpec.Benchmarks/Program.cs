using GroveSpec.Benchmarks;

return Comparison.Run(args, Console.Out);
