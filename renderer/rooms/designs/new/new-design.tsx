import type { ComponentType } from 'react'
import { usePlace } from '../../../app/place.ts'
import { GridPage } from '../bring-in/grid-page.tsx'
import { BlankPage } from './blank-page.tsx'
import { NewStart } from './new-start.tsx'
import { OutlinePage } from './outline-page.tsx'
import { PicturePage } from './picture/picture-page.tsx'
import { type WayName, wayOf } from './ways.ts'
import { WordPage } from './word-page.tsx'
import './new.css'

const pages: Readonly<Record<WayName, ComponentType>> = {
  blank: BlankPage,
  outline: OutlinePage,
  picture: PicturePage,
  grid: GridPage,
  words: WordPage,
}

/** The ways to begin a design, or the one that the address names. */
export function NewDesign() {
  const way = wayOf(usePlace().sub)
  if (way === undefined) return <NewStart />
  const Page = pages[way]
  return <Page />
}
