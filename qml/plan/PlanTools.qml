pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What can be drawn on the plan, and what to do next.
ColumnLayout {
    id: root

    required property PlanEditorViewModel editor

    spacing: Theme.gap

    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap

        Repeater {
            model: root.editor.tools

            PlainButton {
                required property int index
                required property string modelData

                objectName: "planTool" + index
                text: modelData
                checked: root.editor.tool === index
                onClicked: root.editor.tool = root.editor.tool === index ? -1 : index
            }
        }
        PlainButton {
            objectName: "planFinish"
            enabled: root.editor.drawing && root.editor.canFinish
            primary: true
            text: qsTr("End the drawing")
            onClicked: root.editor.finish()
        }
    }
    Text {
        objectName: "planHint"
        Layout.fillWidth: true
        Layout.preferredHeight: 2 * font.pixelSize * 1.35 // always two lines: the plan below stands still
        text: root.editor.hint
        font.pixelSize: Theme.small + 1
        color: Theme.softInk
        wrapMode: Text.WordWrap
        Accessible.role: Accessible.StatusBar
        Accessible.name: text
    }
}
