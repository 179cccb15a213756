import QtQuick
import QtTest
import Underbough.Ui

TestCase {
    id: testCase
    name: "Theme"

    // Published: Web Content Accessibility Guidelines 2.1, success criterion 1.4.3 and the
    // definitions of relative luminance and contrast ratio.
    function linear(channel) {
        return channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4)
    }
    function luminance(c) {
        return 0.2126 * linear(c.r) + 0.7152 * linear(c.g) + 0.0722 * linear(c.b)
    }
    function contrast(a, b) {
        const x = luminance(a), y = luminance(b)
        return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05)
    }

    function test_contrastOfTheGuidelinesOwnExample() {
        verify(Math.abs(contrast(Qt.color("white"), Qt.color("black")) - 21) < 1e-6)
        verify(Math.abs(contrast(Qt.color("#767676"), Qt.color("white")) - 4.54) < 0.01)
    }

    function test_textIsLegible_data() {
        const rows = []
        for (const dark of [false, true])
            for (const ink of ["ink", "softInk", "good", "mind", "grave"])
                for (const ground of ["window", "panel", "paper", "field", "hover"])
                    rows.push({ tag: (dark ? "dark " : "light ") + ink + " on " + ground,
                                dark: dark, ink: ink, ground: ground })
        for (const dark of [false, true]) {
            rows.push({ tag: "button " + dark, dark: dark, ink: "accentInk", ground: "accent" })
        }
        return rows
    }
    function test_textIsLegible(row) {
        Theme.dark = row.dark
        const found = contrast(Theme[row.ink], Theme[row.ground])
        verify(found >= 4.5, found.toFixed(2))
        Theme.dark = false
    }

    function test_drawnTextIsLegible_data() {
        const rows = []
        for (const dark of [false, true])
            for (const ink of ["ink", "faintInk", "enough", "shortOf", "line", "cut"])
                rows.push({ tag: (dark ? "dark " : "light ") + ink, dark: dark, ink: ink })
        return rows
    }
    function test_drawnTextIsLegible(row) {
        Theme.dark = row.dark
        const found = contrast(Theme.drawing[row.ink], Theme.drawing.paper)
        verify(found >= 4.5, found.toFixed(2))
        Theme.dark = false
    }

    // Published: Machado, Oliveira & Fernandes 2009, "A physiologically-based model for simulation
    // of color vision deficiency", IEEE TVCG 15(6), full protanopia and deuteranopia, linear RGB.
    readonly property var deficiencies: ({
        protanopia: [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216,
                     -0.003882, -0.048116, 1.051998],
        deuteranopia: [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413,
                       -0.011820, 0.042940, 0.968881],
        none: [1, 0, 0, 0, 1, 0, 0, 0, 1]
    })
    function seenLuminance(c, m) {
        const r = linear(c.r), g = linear(c.g), b = linear(c.b)
        const clamp = x => Math.min(1, Math.max(0, x))
        return 0.2126 * clamp(m[0] * r + m[1] * g + m[2] * b)
             + 0.7152 * clamp(m[3] * r + m[4] * g + m[5] * b)
             + 0.0722 * clamp(m[6] * r + m[7] * g + m[8] * b)
    }
    function test_loadTintsGrowInOneDirectionForEveryEye_data() {
        const rows = []
        for (const dark of [false, true])
            for (const eye of ["none", "protanopia", "deuteranopia"])
                rows.push({ tag: (dark ? "dark " : "light ") + eye, dark: dark, eye: eye })
        return rows
    }
    function test_loadTintsGrowInOneDirectionForEveryEye(row) {
        Theme.dark = row.dark
        const tints = Theme.drawing.loads
        compare(tints.length, 5)
        for (let i = 1; i < tints.length; ++i) {
            const before = seenLuminance(tints[i - 1], testCase.deficiencies[row.eye])
            const here = seenLuminance(tints[i], testCase.deficiencies[row.eye])
            const step = (Math.max(before, here) + 0.05) / (Math.min(before, here) + 0.05)
            verify(row.dark ? here > before : here < before, "step " + i)
            verify(step >= 1.25, "step " + i + ": " + step.toFixed(2))
        }
        Theme.dark = false
    }
}
