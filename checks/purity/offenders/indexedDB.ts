indexedDB.open('x');
