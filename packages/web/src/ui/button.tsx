import { withSoftHyphens } from '@combside/words/soft-hyphens';
import type { ButtonHTMLAttributes } from 'react';

interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** `act` does the thing the screen is for, `main` is the big field button, `plain` looks like a link. */
  readonly look?: 'act' | 'main' | 'main act' | 'plain' | 'wide' | 'wide act';
}

/** A button that says what happens when it is pressed. It never submits a form unless told to. */
export function Button({ look, className, type = 'button', children, ...rest }: ButtonProps) {
  return (
    <button type={type} className={['button', look, className].filter(Boolean).join(' ')} {...rest}>
      {typeof children === 'string' ? withSoftHyphens(children) : children}
    </button>
  );
}
