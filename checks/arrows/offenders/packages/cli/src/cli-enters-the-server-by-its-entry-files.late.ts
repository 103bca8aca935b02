export const offence = () => import('@combside/server/store/door');
