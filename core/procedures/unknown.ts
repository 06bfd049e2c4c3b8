// Refusals of names that the book does not hold, worded alike everywhere.
import { refuse } from '../answer.ts';

export function unknownJob(code: string) {
  return refuse('unknown-job', `There is no job ${code} in this book.`, { field: 'job' });
}

export function unknownPour(code: string, job: string, field = 'pour') {
  return refuse('unknown-pour', `There is no pour ${code} in job ${job}.`, { field });
}

export function unknownComponent(code: string) {
  return refuse('unknown-component', `There is no component ${code} in this book.`, { field: 'component' });
}

export function unknownDesign(code: string) {
  return refuse('unknown-design', `There is no design ${code} in this book.`, { field: 'design' });
}

export function unknownSystem(code: string) {
  return refuse('unknown-system', `There is no panel system ${code} in this book.`, { field: 'system' });
}

export function unknownGang(code: string) {
  return refuse('unknown-gang', `There is no gang ${code} in this book.`, {
    field: 'gang',
    hint: 'Maybe it was never booked as built.',
  });
}

export function unknownContainer(code: string) {
  return refuse('unknown-container', `There is no container ${code} in this book.`, {
    field: 'container',
    hint: 'Maybe it bears another tag, or was never given one.',
  });
}
