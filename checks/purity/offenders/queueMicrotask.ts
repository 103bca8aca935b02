queueMicrotask(() => {});
