localStorage.clear();
