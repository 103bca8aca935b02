requestAnimationFrame(() => {});
