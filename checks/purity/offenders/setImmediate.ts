setImmediate(() => {});
