import { Component, type ErrorInfo, type ReactNode } from 'react';
import { Button } from '../ui/button.tsx';
import { useWords } from '../ui/words-context.tsx';
import { keepFault } from './faults.ts';

/** When a screen fails, says that what was saved is safe, and offers to open it again. */
export class CatchesFailure extends Component<{ readonly children: ReactNode }, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError() {
    return { failed: true };
  }

  override componentDidCatch(error: Error, info: ErrorInfo) {
    keepFault(error, info.componentStack ?? '');
  }

  override render() {
    if (!this.state.failed) return this.props.children;
    return <Failed onAgain={() => this.setState({ failed: false })} />;
  }
}

function Failed({ onAgain }: { readonly onAgain: () => void }) {
  const words = useWords();
  const report = async () => {
    const { saveFaultReport } = await import('./fault-report.ts');
    await saveFaultReport();
  };
  return (
    <main className="front field stack">
      <h1>{words.say('front.broken')}</h1>
      <Button look="act" onClick={onAgain}>
        {words.say('front.broken.again')}
      </Button>
      <Button onClick={() => void report()}>{words.say('front.broken.report')}</Button>
    </main>
  );
}
