import { rmSync } from 'node:fs'
import { join } from 'node:path'

const electronDist = process.env['TALLYSTRAND_ELECTRON_DIST']
const electronVersion = process.env['TALLYSTRAND_ELECTRON_VERSION']

/**
 * How the studio is packed for Linux, Windows and macOS.
 *
 * @type {import('electron-builder').Configuration}
 */
export default {
  appId: 'invalid.tallystrand.studio',
  productName: 'Tallystrand',
  copyright: 'MIT licence',
  directories: { output: 'release', buildResources: 'resources' },
  files: [
    'package.json',
    'dist/**',
    '!dist/.stamps',
    '!**/*.{map,md,markdown,d.ts,d.mts,d.cts}',
    // Bundled into the service, all but the native module.
    '!node_modules/better-sqlite3/{deps,src,lib,binding.gyp}',
    // The database module for the one platform a package is for.
    // biome-ignore lint/suspicious/noTemplateCurlyInString: filled in by electron-builder.
    '!node_modules/better-sqlite3/prebuilds/!(${platform}-${arch}).node',
    '!node_modules/node-addon-api',
    // Bundled into the service already.
    '!node_modules/kysely',
    '!node_modules/pdfkit/js/*.standalone.js',
    '!node_modules/**/{test,tests,example,examples,docs}/**',
    '!node_modules/@noble/*/{src,esm}/**',
  ],
  asar: true,
  asarUnpack: ['**/*.node'],
  // The module's prebuilt files fit every Electron with Node-API 10.
  npmRebuild: false,
  publish: null,
  ...(electronDist === undefined ? {} : { electronDist }),
  ...(electronVersion === undefined ? {} : { electronVersion }),
  electronFuses: {
    runAsNode: false,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    loadBrowserProcessSpecificV8Snapshot: false,
    grantFileProtocolExtraPrivileges: false,
  },
  afterPack,
  linux: {
    target: ['AppImage', 'deb', 'tar.gz'],
    category: 'Office',
    icon: 'resources/icons',
    executableName: 'tallystrand',
    synopsis: 'From the bead chart to the shelf',
  },
  win: {
    target: ['nsis'],
    icon: 'resources/icons/512x512.png',
  },
  nsis: { oneClick: false, perMachine: false, allowToChangeInstallationDirectory: true },
  mac: {
    target: ['dmg'],
    icon: 'resources/icons/1024x1024.png',
    category: 'public.app-category.business',
    hardenedRuntime: true,
    darkModeSupport: true,
  },
}

/** Takes out what only a development runtime carries. */
async function afterPack({ appOutDir, packager }) {
  const resources = packager.getResourcesDir(appOutDir)
  for (const name of ['default_app.asar', 'app-update.yml']) {
    rmSync(join(resources, name), { force: true })
  }
  rmSync(join(appOutDir, 'made-by-tallystrand'), { force: true })
}
