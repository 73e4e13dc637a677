import { useState } from 'react'
import { chooseGround, type Ground, groundChosen } from '../../shared/platform/index.js'
import { Choices } from '../../shared/ui/index.js'

/** Light or dim; a choice of this device alone. */
export function GroundPart() {
  const [ground, setGround] = useState<Ground>(groundChosen)
  return (
    <section aria-labelledby="ground">
      <h2 id="ground">This device</h2>
      <Choices
        legend="Ground"
        value={ground}
        options={[
          ['device', 'As the device is set'],
          ['light', 'Light: paper and black ink'],
          ['dim', 'Dim: dark and warm, little blue'],
        ]}
        onValue={(chosen) => {
          chooseGround(chosen)
          setGround(chosen)
        }}
      />
    </section>
  )
}
