import { parentPort, workerData } from 'node:worker_threads'
import { drawsOfJob, readJob } from '#job'
import type { DrawShare } from './draw-crew.ts'

const { text, from, count, longer } = workerData as DrawShare
const job = readJob(text)
const drawn = job.problems ? job : drawsOfJob(job.ok, { from, count, longer })
parentPort?.postMessage(drawn)
