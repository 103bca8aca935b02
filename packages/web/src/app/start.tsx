import '../ui/tokens.css';
import '../ui/controls.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { listenForFaults } from './faults.ts';
import { Program } from './program.tsx';

listenForFaults();

const root = document.getElementById('root');
if (!root) throw new Error('index.html has no element "root" to draw into');
createRoot(root).render(
  <StrictMode>
    <Program />
  </StrictMode>,
);
