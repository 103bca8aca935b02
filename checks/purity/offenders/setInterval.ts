setInterval(() => {}, 10);
