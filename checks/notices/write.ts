import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { noticeText } from './notices.ts';

const house = join(import.meta.dirname, '../..');
writeFileSync(join(house, 'NOTICE.md'), noticeText(house));
