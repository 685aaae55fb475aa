using System.Text;
using Saponify.Cli;

Console.OutputEncoding = Encoding.UTF8;
Console.InputEncoding = Encoding.UTF8;
return CommandLine.Run(args, Console.In, Console.Out, Console.Error);
