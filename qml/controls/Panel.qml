import QtQuick
import Underbough.Ui

/// A sheet that something lies on.
Rectangle {
    radius: Theme.radius
    color: Theme.panel
    border.color: Theme.edge
}
