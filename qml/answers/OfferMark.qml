import QtQuick
import Underbough.Ui

/// A point of the curve: round where nothing does as much for less leaf, a square on its corner where
/// the search was cut short of that.
Rectangle {
    required property bool proven
    required property bool taken
    required property bool large

    width: (large ? 16 : 12) - (proven ? 0 : 2)
    height: width
    radius: proven ? width / 2 : 0
    rotation: proven ? 0 : 45
    color: taken ? Theme.accent : Theme.panel
    border.width: 2
    border.color: Theme.accent
}
