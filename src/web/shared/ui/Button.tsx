import type { ComponentProps } from 'react'
import { Link } from '../navigation/index.js'

type Look = 'plain' | 'go' | 'bare'
const classOf = (look: Look, more = '') => `btn ${look === 'plain' ? '' : look} ${more}`.replace(/ +/g, ' ').trim()

/** A button. While it waits it keeps its place and focus, and does nothing. */
export function Button({
  look = 'plain',
  waits = false,
  className,
  onClick,
  ...rest
}: ComponentProps<'button'> & { look?: Look; waits?: boolean }) {
  return (
    <button
      type="button"
      {...rest}
      className={classOf(look, className)}
      {...(waits ? { 'aria-disabled': true } : {})}
      onClick={waits ? (event) => event.preventDefault() : onClick}
    />
  )
}

/** A link that looks like a button. */
export const ButtonLink = ({
  look = 'plain',
  className,
  ...rest
}: ComponentProps<'a'> & { href: string; look?: Look }) => <Link {...rest} className={classOf(look, className)} />
