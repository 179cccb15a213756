import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The chosen limb: its name, its measures, what it carries.
RowLayout {
    id: root

    required property SideViewModel side
    /// What to do while no limb is chosen.
    property string hint: qsTr("Click a limb, or Tab to a handle, to see its figures and to change it.")

    signal factsWanted

    /// For what it carries and when it is likely to break.
    readonly property int lines: root.width < 700 ? 6 : Window.height < 800 ? 2 : 3

    spacing: Theme.gap

    LineInput {
        id: nameField
        objectName: "limbName"
        Layout.preferredWidth: root.width < 700 ? 130 : 190
        text: root.side.limbName
        enabled: root.side.chosenLimb.length > 0
        placeholderText: qsTr("No limb chosen")
        maximumLength: 80
        spoken: qsTr("Name of the chosen limb")
        onEditingFinished: {
            if (text !== root.side.limbName)
                root.side.renameLimb(text)
            text = Qt.binding(() => root.side.limbName)
        }
    }
    ColumnLayout {
        Layout.fillWidth: true
        // Room for all of it from the start: a limb that is pressed must not move under the hand.
        Layout.minimumHeight: (root.lines + 1) * Math.ceil(1.25 * (Theme.small + 1)) + 2
        spacing: 1

        Text {
            Layout.fillWidth: true
            Layout.fillHeight: root.side.limbLoad.length === 0
            verticalAlignment: Text.AlignVCenter
            text: root.side.chosenLimb.length > 0
                  ? root.side.limbFacts
                  : root.hint
            font.pixelSize: Theme.small + 1
            color: Theme.ink
            wrapMode: Text.WordWrap
            maximumLineCount: root.width < 700 ? 3 : 2
            elide: Text.ElideRight
        }
        Text {
            Layout.fillWidth: true
            visible: text.length > 0
            text: root.side.limbLoad
            font.pixelSize: Theme.small
            color: Theme.softInk
            wrapMode: Text.WordWrap
            maximumLineCount: root.lines < 3 ? 2 : root.lines + 1 // seldom: the last one moves the drawing
            elide: Text.ElideRight
        }
    }
    PlainButton {
        objectName: "limbFactsButton"
        text: qsTr("Measure\u2026")
        Accessible.description: qsTr("Girth by tape, union, leaf, crop and defects of the limb; copy, mirror and split it")
        enabled: root.side.chosenLimb.length > 0 && !root.side.showsAfter
        onClicked: root.factsWanted()
    }
    PlainButton {
        objectName: "eraseButton"
        text: qsTr("Erase limb")
        enabled: root.side.canDelete && !root.side.showsAfter
        onClicked: root.side.deleteLimb()
    }
}
