using System.Text;
using Saponify.Cli;

Console.OutputEncoding = Encoding.UTF8;
using StreamReader input = new(Console.OpenStandardInput(), new UTF8Encoding(false, throwOnInvalidBytes: true));
return CommandLine.Run(args, input, Console.Out, Console.Error);
