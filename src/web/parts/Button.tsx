import type { ComponentProps } from 'react';
import { classNames } from './classNames.js';
import styles from './Button.module.css';

type Weight = 'main' | 'plain' | 'quiet';

/** A button; `main` is what the page is for, of which there is one at the most. */
export function Button({
  weight = 'plain',
  ...rest
}: ComponentProps<'button'> & { weight?: Weight }) {
  return <button type="button" {...rest} className={buttonClass(weight)} />;
}

/** The same look for a link. */
export const buttonClass = (weight: Weight = 'plain'): string =>
  classNames(styles['button'], weight !== 'plain' && styles[weight]);
