/** The build puts jsQR here. */
export { default } from 'jsqr';
