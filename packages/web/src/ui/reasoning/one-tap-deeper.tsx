import { type ReactNode, useState } from 'react';

/** What stands one tap deeper. It is not on the page at all until somebody opens it. */
export function OneTapDeeper({ title, children }: { readonly title: ReactNode; readonly children: ReactNode }) {
  const [open, setOpen] = useState(false);
  return (
    <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {open && children}
    </details>
  );
}
