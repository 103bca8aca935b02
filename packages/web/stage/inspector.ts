import { inspectorOfTheDay } from '@combside/casework/demo/people';
import type { Session } from '../src/app/session.ts';

/** Who holds the phone on the stage. */
export const inspector: Session = {
  person: inspectorOfTheDay.id,
  name: inspectorOfTheDay.name,
  role: 'inspector',
  districts: ['quillmoor'],
  pack: 'quillmoor',
};
