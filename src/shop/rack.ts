import { declare } from '#parameters'

/** A bar, sheet or remnant as it lies on the rack. */
export const rackItemParameters = declare({
  steel: { form: 'steel', help: 'Its grade; of a patterned remnant the steel it has most of' },
  form: {
    form: 'choice',
    options: {
      bar: 'bar or sheet as bought',
      remnant: 'what was left of another job',
    },
    default: 'bar',
    help: 'What it is; remnants are used first',
  },
  thickness: { form: 'quantity', of: 'length', min: 2e-5, max: 0.5, help: 'Thickness' },
  width: { form: 'quantity', of: 'length', min: 1e-3, max: 3, help: 'Width' },
  length: { form: 'quantity', of: 'length', min: 5e-3, max: 20, help: 'Length' },
  count: { form: 'count', min: 1, max: 1000, default: 1, help: 'How many alike' },
  place: { form: 'text', optional: true, longest: 80, help: 'Where it lies, or its batch' },
})

/** How the shop cuts its stock. */
export const cuttingParameters = declare({
  ends: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.1,
    default: '3 mm',
    help: 'Cut off each end of a bought bar because it is crooked or sheared (common practice)',
  },
  leastRemnant: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 5,
    default: '100 mm',
    help: 'The shortest piece worth putting back on the rack (common practice)',
  },
  sizes: {
    form: 'choice',
    options: { metric: 'millimetres and metres', inch: 'inches and feet' },
    default: 'metric',
    help: 'Standard sizes in which steel is bought',
  },
})
