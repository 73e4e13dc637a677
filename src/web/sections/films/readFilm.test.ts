import { describe, expect, it } from 'vitest'
import { deskWords, learn } from '../../../words/index.js'
import { draftOf, EMPTY_FILM, type FilmDraft, readFilm } from './readFilm.js'

learn(deskWords)
const read = (changes: Partial<FilmDraft>) => readFilm('Tarn 100', { ...EMPTY_FILM, ...changes }, [])

describe('a film as it is typed', () => {
  it('is read, and written as it was typed', () => {
    const typed = {
      tolerance: 'contrast',
      down: '0.05',
      up: '0,1',
      strips: '5:00, 0.45\n10:00; 0.66',
      drying: '2:30:00',
    } as const
    const reading = read(typed)
    expect(reading).toEqual({
      statement: {
        name: 'Tarn 100',
        process: 'black-and-white',
        tolerance: { in: 'contrast', down: 0.05, up: 0.1 },
        fixing: 'ordinary',
        remarks: [],
        drying_s: 9000,
        keeping: '',
        note: '',
        strips: [
          { time_s: 300, contrast: 0.45 },
          { time_s: 600, contrast: 0.66 },
        ],
      },
    })
    const kept = { ...(reading.statement as object), id: '', revision: 1, saved_at: '', removed: false }
    expect(draftOf(kept as unknown as Parameters<typeof draftOf>[0])).toMatchObject({
      tolerance: 'contrast',
      up: '0.1',
      strips: '5:00, 0.45\n10:00, 0.66',
      drying: '2:30:00',
    })
  })

  it.each([
    ['down', { down: '60' }],
    ['up', { up: '' }],
    ['up', { tolerance: 'contrast', up: '5' }],
    ['drying', { drying: '5:00' }],
    ['drying', { drying: 'a night' }],
    ['strips', { strips: '6:00' }],
    ['strips', { strips: '6:00, 9' }],
  ] as const)('says what is wrong with %s: %o', (field, changes) => {
    expect(read(changes)).toMatchObject({ statement: null, troubles: { [field]: expect.any(String) } })
  })
})
