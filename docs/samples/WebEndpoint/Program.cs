using WebEndpoint;

App.Create(args).Run();
