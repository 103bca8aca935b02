import { Link } from 'wouter';
import { useWords } from '../../ui/words-context.tsx';

const tabs = [
  ['apiaries', '/register'],
  ['keepers', '/register/keepers'],
  ['settle', '/register/settle'],
  ['duplicates', '/register/duplicates'],
  ['import', '/register/import'],
  ['export', '/register/export'],
] as const;

export type Tab = (typeof tabs)[number][0];

/** Where one can go within the register. */
export function RegisterTabs({ at }: { readonly at: Tab }) {
  const words = useWords();
  return (
    <ul className="register-tabs">
      {tabs.map(([name, href]) => (
        <li key={name}>
          <Link href={href} aria-current={name === at ? 'page' : undefined}>
            {words.say(`register.${name}`)}
          </Link>
        </li>
      ))}
    </ul>
  );
}
