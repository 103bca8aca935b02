import { door as ui } from '../ui/door.ts';
import { door as device } from '../device/door.ts';
import { door as drawings } from '@combside/papers/drawings/door';

export const fine = [ui, device, drawings];
