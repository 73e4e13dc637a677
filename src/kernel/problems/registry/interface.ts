import { registered } from './registered.js'

export const interfaceProblems = {
  // The HTTP interface and the command line
  'request.invalid': registered(422, 64, 'interface#requests', '{reason}'),
  'request.not-json': registered(400, 65, 'interface#requests', 'The request body is not JSON: {reason}.'),
  'request.media-type': registered(
    415,
    65,
    'interface#requests',
    'A body of type {type} is not read here; send {wanted}.',
  ),
  'request.too-large': registered(413, 65, 'interface#requests', 'The request body is larger than {most}.'),
  'request.bad-address': registered(
    400,
    65,
    'interface#requests',
    'The address {path} cannot be read. A part of it has at most 200 characters, and a % is followed by two hexadecimal digits.',
  ),
  'request.no-such-route': registered(404, 66, 'interface#requests', 'There is nothing at {path}.'),
  'request.host': registered(
    421,
    77,
    'interface#hosts',
    'This server does not answer to the name {host}. Use one of: {allowed}.',
  ),
  'request.origin': registered(403, 77, 'interface#hosts', 'A page of {origin} may not change anything here.'),
  'request.who': registered(
    401,
    77,
    'house#pairing',
    'This device is not paired with the bench. Open the address shown by the QR code on the computer that runs the program.',
  ),
  'request.not-allowed': registered(403, 77, 'house#pairing', 'A {role} may not do this; it is for {allowed}.'),
  'request.too-many': registered(429, 75, 'house#pairing', 'Too many attempts. Wait {wait} and try again.'),
  'request.key-reused': registered(
    409,
    65,
    'interface#keys',
    'The key {key} was already used for a different request. Make a new key for each write.',
  ),
  'server.bug': registered(
    500,
    70,
    'interface#bugs',
    'Something failed that should not have. It was logged under {reference}; nothing of this request was kept.',
  ),
  'command.usage': registered(400, 64, 'commands#usage', '{reason}'),
  'command.list-too-long': registered(
    413,
    65,
    'commands#lists',
    'The list is longer than {most}, the most that is read.',
  ),
  'environment.bad': registered(500, 64, 'house#start', '{name} is “{value}”; it should be {right}.'),
} as const
