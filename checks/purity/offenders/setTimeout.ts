setTimeout(() => {}, 10);
