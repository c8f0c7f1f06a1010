Console.WriteLine("BuildLog");
