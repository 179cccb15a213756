import QtQuick
import Underbough.Ui

/// Opens the chain behind a figure.
PlainButton {
    text: qsTr("Why this number?")
    font.pixelSize: Theme.small
}
