import { parentPort, workerData } from 'node:worker_threads'
import { drawerOfJob, readJob } from '#job'
import { type DrawShare, drawParts } from './draw-parts.ts'

const share = workerData as DrawShare
const job = readJob(share.text)
const draw = job.problems ? job : drawerOfJob(job.ok)
parentPort?.postMessage(draw.ok ? await drawParts(draw.ok, share) : [])
