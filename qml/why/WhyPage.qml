pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// Why a figure is what it is, in the place of the answers: the drawing stays beside it, and a limb
/// that is dragged changes the chain under the hand.
Panel {
    id: root

    required property WhyViewModel why

    Accessible.role: Accessible.Pane
    Accessible.name: root.why.title

    /// The button that asked, to go back to.
    property Item cameFrom: null

    onVisibleChanged: {
        if (visible)
            back.forceActiveFocus(Qt.OtherFocusReason)
        else if (root.cameFrom)
            root.cameFrom.forceActiveFocus(Qt.OtherFocusReason)
    }

    Shortcut {
        sequences: ["Escape"]
        enabled: root.visible
        onActivated: root.why.close()
    }
    ColumnLayout {
        anchors { fill: parent; margins: Theme.wide }
        spacing: Theme.gap

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap

            Text {
                Layout.fillWidth: true
                objectName: "whyTitle"
                text: root.why.title.length > 0 ? root.why.title : qsTr("Working it out\u2026")
                font.pixelSize: Theme.lead
                font.weight: Font.DemiBold
                color: Theme.ink
                wrapMode: Text.WordWrap
            }
            PlainButton {
                id: back
                objectName: "whyBack"
                Layout.alignment: Qt.AlignTop
                text: qsTr("Back")
                Accessible.name: qsTr("Back to the answers")
                onClicked: root.why.close()
            }
        }
        Text {
            Layout.fillWidth: true
            objectName: "whyAnswer"
            text: root.why.answer
            visible: text.length > 0
            font.pixelSize: Theme.body
            color: Theme.ink
            wrapMode: Text.WordWrap
            lineHeight: 1.15
        }
        Note { text: root.why.about }
        ListView {
            id: list
            objectName: "whySteps"
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            model: root.why.steps
            delegate: ChainRow {}
            boundsBehavior: Flickable.StopAtBounds
            ScrollBar.vertical: ScrollBar {}
            // A row that Tab comes to is brought into sight.
            cacheBuffer: 4000
            Connections {
                target: root.Window.window
                function onActiveFocusItemChanged() {
                    const item = root.Window.window.activeFocusItem
                    if (item as WhyButton)
                        root.cameFrom = item
                    const row = item as ChainRow
                    if (row)
                        list.contentY = Math.max(list.originY, Math.min(row.y, list.originY + list.contentHeight - list.height))
                }
            }
        }
        Note {
            visible: root.why.method.length > 0
            text: qsTr("Numbers such as L10 or A2 are those of the formulas in %1 of the program's documentation.").arg(root.why.method)
        }
    }
}
