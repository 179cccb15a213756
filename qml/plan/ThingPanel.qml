import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What the thing chosen on the plan is: its name, its plant, its sizes, typed.
ColumnLayout {
    id: root

    required property PlanEditorViewModel editor
    required property ThingViewModel thing

    spacing: Theme.gap

    component Fact: TypedField {
        Layout.fillWidth: true
        Layout.preferredWidth: 1
    }

    Choice {
        objectName: "thingChoice"
        Layout.fillWidth: true
        label: qsTr("What is on the plan")
        model: root.editor.things
        currentIndex: root.editor.thing
        displayText: currentIndex < 0 ? qsTr("Choose what to change") : currentText
        enabled: root.editor.things.length > 0
        onActivated: (index) => root.editor.choose(index)
    }
    Note {
        visible: !root.thing.any
        text: root.editor.things.length > 0
              ? qsTr("Choose a thing here or click it on the plan: its name, its sizes and its place stand here then, to be typed. Drag it by its middle or a corner.")
              : qsTr("What you draw stands here: its name, its sizes and its place, to be typed.")
    }
    Fact {
        objectName: "thingName"
        visible: root.thing.any
        label: qsTr("Name")
        value: root.thing.name
        onSettled: (text) => root.thing.name = text
    }
    Choice {
        objectName: "thingSort"
        Layout.fillWidth: true
        visible: root.thing.sorts.length > 0
        label: qsTr("What it is")
        model: root.thing.sorts
        currentIndex: root.thing.sort
        onActivated: (index) => root.thing.sort = index
    }
    SearchField {
        objectName: "thingPlant"
        Layout.fillWidth: true
        visible: root.thing.isPlanting || root.thing.isNeighbour
        label: root.thing.isNeighbour ? qsTr("Kind of tree, common or Latin name") : qsTr("Plant, common or Latin name")
        value: root.thing.plantTyped
        found: root.thing.plants
        onTyped: (text) => root.thing.plantTyped = text
        onTaken: (index) => root.thing.takePlant(index)
        onWentOn: root.thing.leavePlants()
    }
    RowLayout {
        spacing: Theme.gap
        visible: root.thing.hasHeight || root.thing.isStrip

        Fact {
            objectName: "thingHeight"
            visible: root.thing.hasHeight
            label: root.thing.isLine ? qsTr("Height of the wire") : qsTr("Height")
            value: root.thing.height
            onSettled: (text) => root.thing.height = text
        }
        Fact {
            objectName: "thingCrownBase"
            visible: root.thing.isNeighbour
            label: qsTr("Lowest leaf")
            value: root.thing.crownBase
            onSettled: (text) => root.thing.crownBase = text
        }
        Fact {
            objectName: "thingStem"
            visible: root.thing.isNeighbour
            label: qsTr("Stem")
            hint: qsTr("not known")
            value: root.thing.stem
            onSettled: (text) => root.thing.stem = text
        }
        Fact {
            objectName: "thingHeadroom"
            visible: root.thing.isStrip
            label: qsTr("Headroom wanted over it")
            hint: qsTr("usually %1").arg(root.thing.usualHeadroom)
            value: root.thing.headroom
            onSettled: (text) => root.thing.headroom = text
        }
        Fact {
            objectName: "thingVoltage"
            visible: root.thing.isLine
            label: qsTr("Voltage, kV")
            hint: qsTr("not known")
            value: root.thing.voltage
            onSettled: (text) => root.thing.voltage = text
        }
    }
    RowLayout {
        spacing: Theme.gap
        visible: root.thing.hasSize

        Fact {
            objectName: "thingLength"
            label: root.thing.isNeighbour ? qsTr("Crown, length") : qsTr("Length")
            value: root.thing.length
            onSettled: (text) => root.thing.length = text
        }
        Fact {
            objectName: "thingWidth"
            label: root.thing.isNeighbour ? qsTr("and width") : qsTr("Width")
            value: root.thing.width
            onSettled: (text) => root.thing.width = text
        }
        Fact {
            objectName: "thingBearing"
            visible: root.thing.isNeighbour
            label: qsTr("Length towards")
            value: root.thing.bearing
            onSettled: (text) => root.thing.bearing = text
        }
    }
    RowLayout {
        spacing: Theme.gap
        visible: root.thing.any

        Fact {
            objectName: "thingEast"
            label: root.thing.isTree ? qsTr("Stem, east") : qsTr("Middle, east")
            value: root.thing.east
            onSettled: (text) => root.thing.east = text
        }
        Fact {
            objectName: "thingNorth"
            label: qsTr("and north")
            value: root.thing.north
            onSettled: (text) => root.thing.north = text
        }
    }
    PlainButton {
        objectName: "thingRemove"
        visible: root.thing.any
        text: qsTr("Take it off the plan")
        onClicked: root.editor.removeChosen()
    }
    Item { Layout.fillHeight: true }
}
