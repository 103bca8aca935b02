fetch('https://example.org');
