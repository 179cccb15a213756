pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The chosen limb, measured: its girth, its union, its leaf, its crop, what is wrong with it.
Sheet {
    id: root

    required property LimbViewModel limb

    title: root.limb.title
    doneText: qsTr("Done")
    hasCancel: false
    wantedWidth: 820
    onOpened: girth.field.forceActiveFocus(Qt.PopupFocusReason)
    onDoneWanted: root.close()

    component Named: NamedChoice {
        Layout.fillWidth: true
        Layout.minimumWidth: root.width < 740 ? 200 : 80
        Layout.preferredWidth: 1
    }
    /// What belongs together side by side, or in twos where there is no room for that.
    component Line: GridLayout {
        columns: root.width < 740 ? 2 : 5
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
    }
    component Measure: TypedField {
        Layout.fillWidth: true
        Layout.minimumWidth: root.width < 740 ? 200 : 80
        Layout.preferredWidth: 1
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.wide

        Line {
            Named {
                label: qsTr("Taped where")
                objectName: "limbStation"
                model: root.limb.stations
                currentIndex: root.limb.station
                onActivated: (index) => root.limb.station = index
            }
            Measure {
                id: girth
                objectName: "limbGirth"
                label: qsTr("Girth there")
                value: root.limb.girth
                onSettled: (text) => root.limb.girth = text
            }
            Measure {
                objectName: "limbDiameter"
                label: qsTr("or through it")
                value: root.limb.diameter
                onSettled: (text) => root.limb.diameter = text
            }
        }
        Line {
            Named {
                label: qsTr("Measured")
                objectName: "limbMeasured"
                model: root.limb.measuredWords
                currentIndex: root.limb.measured
                onActivated: (index) => root.limb.measured = index
            }
            Named {
                label: qsTr("Its union")
                Layout.preferredWidth: 2
                visible: !root.limb.isTrunk
                objectName: "limbUnion"
                model: root.limb.unions
                currentIndex: root.limb.unionKind
                onActivated: (index) => root.limb.unionKind = index
            }
            Measure {
                objectName: "limbFruit"
                label: qsTr("Ripe crop on it")
                value: root.limb.fruit
                onSettled: (text) => root.limb.fruit = text
            }
        }
        Line {
            Tick {
                objectName: "limbLeafy"
                text: qsTr("Leafy")
                checked: root.limb.leafy
                onToggled: root.limb.leafy = checked
            }
            Measure {
                objectName: "limbLeafFrom"
                enabled: root.limb.leafy
                label: qsTr("Leaves from, along it")
                value: root.limb.leafFrom
                onSettled: (text) => root.limb.leafFrom = text
            }
            Measure {
                objectName: "limbLeafRadius"
                enabled: root.limb.leafy
                label: qsTr("Leaf around it")
                value: root.limb.leafRadius
                onSettled: (text) => root.limb.leafRadius = text
            }
            Measure {
                objectName: "limbHanging"
                enabled: root.limb.leafy
                label: qsTr("Hanging shoots")
                value: root.limb.hanging
                onSettled: (text) => root.limb.hanging = text
            }
            Named {
                label: qsTr("Foliage")
                enabled: root.limb.leafy
                objectName: "limbDensity"
                model: root.limb.densities
                currentIndex: root.limb.density
                onActivated: (index) => root.limb.density = index
            }
        }
        Text {
            text: qsTr("What is wrong with it")
            font.pixelSize: Theme.lead
            font.weight: Font.DemiBold
            color: Theme.ink
        }
        Repeater {
            model: root.limb.defects

            RowLayout {
                id: defect
                required property int index
                required property string modelData

                Text {
                    Layout.fillWidth: true
                    text: defect.modelData
                    font.pixelSize: Theme.body
                    color: Theme.ink
                }
                PlainButton {
                    objectName: "defectRemove" + defect.index
                    text: qsTr("Take back")
                    Accessible.name: qsTr("Take back: %1").arg(defect.modelData)
                    onClicked: root.limb.removeDefect(defect.index)
                }
            }
        }
        Line {
            Named {
                id: kind
                label: qsTr("Mark")
                Layout.minimumWidth: 200
                objectName: "defectKind"
                model: root.limb.defectKinds
            }
            Measure {
                id: at
                objectName: "defectAt"
                label: qsTr("How far along it")
                value: ""
                onTyped: (text) => at.value = text
            }
            Measure {
                id: wall
                objectName: "defectWall"
                visible: kind.currentIndex < 2
                label: qsTr("Sound wood around it")
                hint: qsTr("not known")
                value: ""
                onTyped: (text) => wall.value = text
            }
            PlainButton {
                objectName: "defectAdd"
                Layout.alignment: Qt.AlignBottom
                text: qsTr("Mark it")
                enabled: at.value.length > 0
                onClicked: {
                    if (root.limb.addDefect(kind.currentIndex, at.value, wall.value)) {
                        at.value = ""
                        wall.value = ""
                    }
                }
            }
        }
        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap

            PlainButton {
                objectName: "limbCopy"
                enabled: !root.limb.isTrunk
                text: qsTr("Copy it, a quarter turn on")
                onClicked: root.limb.copy()
            }
            PlainButton {
                objectName: "limbMirror"
                enabled: !root.limb.isTrunk
                text: qsTr("Mirror it")
                onClicked: root.limb.mirror()
            }
            PlainButton {
                objectName: "limbSplit"
                text: qsTr("Split it in two")
                onClicked: root.limb.split()
            }
        }
    }
}
