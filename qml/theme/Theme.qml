pragma Singleton
import QtQuick
import Underbough.App

/// Colours, sizes and gaps, once. Every pair of ink and ground used for text has a contrast of at
/// least 4.5 to 1 in both lights (tests/qml/tst_Theme.qml works it out).
QtObject {
    id: theme

    /// Dark surroundings; the window sets it.
    property bool dark: false

    // Grounds
    readonly property color window: dark ? "#131916" : "#ece7db"
    readonly property color panel: dark ? "#1d2520" : "#fcfaf4"
    readonly property color paper: dark ? "#19201c" : "#f7f4eb"
    readonly property color field: dark ? "#27312b" : "#ffffff"
    readonly property color hover: dark ? "#2d3932" : "#efeadd"
    readonly property color edge: dark ? "#3b4840" : "#d5ccb9"

    // Inks
    readonly property color ink: dark ? "#e9ede4" : "#21302a"
    readonly property color softInk: dark ? "#adb9b0" : "#52605a"
    readonly property color accent: dark ? "#7fcdb3" : "#1c6755"
    readonly property color accentInk: dark ? "#10201a" : "#ffffff"
    readonly property color good: dark ? "#8fcf9a" : "#2a6739"
    readonly property color mind: dark ? "#e9b75f" : "#835400"
    readonly property color grave: dark ? "#f5a088" : "#9c3720"
    readonly property color focus: dark ? "#93baff" : "#1f56b3"

    // Type, in pixels
    readonly property int small: 12
    readonly property int body: 14
    readonly property int lead: 16
    readonly property int heading: 19

    // Gaps and sizes, in pixels
    readonly property int gap: 8
    readonly property int wide: 16
    readonly property int margin: 20
    readonly property int radius: 8
    readonly property int control: 34
    readonly property int finger: 44 // what a finger finds: 9 mm and more on most screens

    readonly property int quick: 120 // milliseconds

    /// Ink for a tone.
    function toneInk(tone: int): color {
        switch (tone) {
        case Tone.Good: return theme.good
        case Tone.Mind: return theme.mind
        case Tone.Grave: return theme.grave
        }
        return theme.ink
    }

    readonly property DrawingColours drawing: DrawingColours {
        paper: theme.paper
        ink: theme.ink
        faintInk: theme.softInk
        soil: theme.dark ? "#5c4d3c" : "#b59f80"
        leaf: theme.dark ? "#6fa878" : "#4c7f57"
        bark: theme.dark ? "#7d7466" : "#8d7f6b"
        planting: theme.dark ? "#5e9a86" : "#3d7a68"
        strip: theme.dark ? "#8b8f98" : "#8a8b90"
        structure: theme.dark ? "#8d7f9c" : "#7b6d8a"
        line: theme.dark ? "#d79be0" : "#7a2d86"
        enough: theme.good
        shortOf: theme.grave
        cut: theme.dark ? "#ff8f6b" : "#b3261e"
        chosen: theme.focus
        shadow: theme.dark ? "#000000" : "#2b3550"
        sun: theme.dark ? "#f2c14e" : "#c98a00"
        // One lightness step each, so that they are told apart without colour vision too.
        loads: theme.dark ? ["#4c5247", "#8b7336", "#ce8a3a", "#f2b193", "#ffeee6"]
                          : ["#e6dfc0", "#dfb052", "#cc7431", "#95304d", "#451850"]
    }
}
