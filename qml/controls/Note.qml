import QtQuick
import QtQuick.Layouts
import Underbough.Ui

/// A remark in small type.
Text {
    Layout.fillWidth: true
    visible: text.length > 0
    font.pixelSize: Theme.small
    color: Theme.softInk
    wrapMode: Text.WordWrap
    lineHeight: 1.15
}
