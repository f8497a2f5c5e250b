import './styles/layers.css'
import './styles/fonts.css'
import './styles/tokens.css'
import './styles/base.css'
import { createRoot } from 'react-dom/client'
import { App } from './app/app.tsx'
import { applyTheme } from './app/theme.ts'

const root = document.getElementById('root')
if (root === null) throw new Error('index.html: expected an element with id root')
applyTheme()
loadFaces()
createRoot(root).render(<App />)

/** The faces of every screen, fetched before the first text needs them: it is laid out and painted once. */
function loadFaces(): void {
  for (const weight of [400, 500, 600]) {
    void document.fonts.load(`${weight} 1rem "Atkinson Hyperlegible Next"`)
  }
  void document.fonts.load('400 1rem Literata')
}
