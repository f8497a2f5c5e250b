import './styles/fonts.css'
import './styles/tokens.css'
import './styles/base.css'
import { createRoot } from 'react-dom/client'
import { App } from './app/app.tsx'
import { applyTheme } from './app/theme.ts'

const root = document.getElementById('root')
if (root === null) throw new Error('index.html: expected an element with id root')
applyTheme()
createRoot(root).render(<App />)
