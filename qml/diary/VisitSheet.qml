pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// A visit being written: what was cut, what was measured, by whom, in what weather.
Rectangle {
    id: root

    required property VisitForm form
    required property PhotosViewModel photos

    objectName: "visitSheet"
    implicitHeight: column.implicitHeight + 2 * Theme.wide
    radius: Theme.radius
    color: Theme.panel
    border.color: Theme.accent
    border.width: 2
    Accessible.role: Accessible.Grouping
    Accessible.name: root.form.title

    onVisibleChanged: {
        if (root.visible)
            day.input.forceActiveFocus()
    }
    Keys.onEscapePressed: root.form.close()

    component Heading: Text {
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        font.pixelSize: Theme.body
        font.weight: Font.DemiBold
        color: Theme.ink
        wrapMode: Text.WordWrap
    }

    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.wide }
        spacing: Theme.gap

        Text {
            Layout.fillWidth: true
            text: root.form.title
            font.pixelSize: Theme.lead
            font.weight: Font.DemiBold
            color: Theme.ink
            wrapMode: Text.WordWrap
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap

            Field {
                id: day
                objectName: "visitDate"
                Layout.preferredWidth: 150
                label: qsTr("Day")
                text: root.form.date
                onTyped: (text) => root.form.date = text
            }
            Field {
                objectName: "visitBy"
                Layout.fillWidth: true
                label: qsTr("Who did it")
                text: root.form.by
                onTyped: (text) => root.form.by = text
            }
        }

        Heading {
            visible: planList.count > 0
            text: qsTr("Which of the planned cuts were made?")
        }
        Repeater {
            id: planList
            model: root.form.ticks
            TickRow { ticks: root.form.ticks }
        }
        PlainButton {
            objectName: "tickAllButton"
            visible: planList.count > 1
            font.pixelSize: Theme.small
            text: qsTr("All of them")
            onClicked: root.form.ticks.tickAll()
        }

        Heading { text: qsTr("Other cuts, or those of an earlier visit") }
        Repeater {
            model: root.form.freeCuts
            RowLayout {
                id: freeCut
                required property string modelData
                required property int index
                Layout.fillWidth: true
                Text {
                    Layout.fillWidth: true
                    text: "\u2022 " + freeCut.modelData
                    font.pixelSize: Theme.body
                    color: Theme.ink
                    wrapMode: Text.WordWrap
                }
                PlainButton {
                    objectName: "removeCut" + freeCut.index
                    font.pixelSize: Theme.small
                    text: qsTr("Remove")
                    Accessible.name: qsTr("Remove: %1").arg(freeCut.modelData)
                    onClicked: root.form.removeCut(freeCut.index)
                }
            }
        }
        GridLayout {
            Layout.fillWidth: true
            columns: root.width > 520 ? 4 : 2
            columnSpacing: Theme.gap

            Choice {
                id: kind
                objectName: "cutKind"
                Layout.alignment: Qt.AlignBottom
                Layout.preferredWidth: 140
                label: qsTr("Kind of cut")
                model: root.form.cutKinds
            }
            WritableChoice {
                id: limb
                objectName: "cutLimb"
                Layout.alignment: Qt.AlignBottom
                Layout.fillWidth: true
                Layout.minimumWidth: 120
                label: qsTr("Limb; one that is gone can be written in")
                currentIndex: -1
                model: root.form.limbs
            }
            Field {
                id: amount
                objectName: "cutAmount"
                Layout.preferredWidth: 110
                enabled: kind.currentIndex !== 0
                opacity: enabled ? 1 : 0.55
                label: kind.currentIndex === 2 ? qsTr("Thinned by")
                     : kind.currentIndex === 3 ? qsTr("Lifted to") : qsTr("Shortened to")
            }
            PlainButton {
                objectName: "addCutButton"
                Layout.alignment: Qt.AlignBottom
                text: qsTr("Add")
                Accessible.name: qsTr("Add this cut")
                onClicked: {
                    if (root.form.addCut(kind.currentIndex, limb.editText, kind.currentIndex === 0 ? "" : amount.text))
                        amount.text = ""
                }
            }
        }
        Tick {
            objectName: "cutSketchTick"
            Layout.fillWidth: true
            enabled: root.form.canCutSketch
            text: qsTr("Make these cuts on the sketch too")
            checked: root.form.cutsSketch
            onToggled: root.form.cutsSketch = checked
        }

        Heading { text: qsTr("What was measured") }
        Repeater {
            model: root.form.strips
            ColumnLayout {
                id: strip
                required property int index
                required property string name
                required property string drawn
                required property string before
                required property string after
                Layout.fillWidth: true
                spacing: 2

                Note { text: qsTr("Headroom over %1 (%2)").arg(strip.name).arg(strip.drawn) }
                RowLayout {
                    Layout.fillWidth: true
                    spacing: Theme.gap
                    Field {
                        objectName: "before" + strip.index
                        Layout.fillWidth: true
                        label: qsTr("Before")
                        text: strip.before
                        spoken: qsTr("Headroom over %1 before").arg(strip.name)
                        onTyped: (text) => root.form.strips.setBefore(strip.index, text)
                    }
                    Field {
                        objectName: "after" + strip.index
                        Layout.fillWidth: true
                        label: qsTr("After")
                        text: strip.after
                        spoken: qsTr("Headroom over %1 after").arg(strip.name)
                        onTyped: (text) => root.form.strips.setAfter(strip.index, text)
                    }
                }
            }
        }
        Repeater {
            model: root.form.tips
            RowLayout {
                id: tip
                required property string modelData
                required property int index
                Layout.fillWidth: true
                Text {
                    Layout.fillWidth: true
                    text: "\u2022 " + tip.modelData
                    font.pixelSize: Theme.body
                    color: Theme.ink
                    wrapMode: Text.WordWrap
                }
                PlainButton {
                    objectName: "removeTip" + tip.index
                    font.pixelSize: Theme.small
                    text: qsTr("Remove")
                    Accessible.name: qsTr("Remove: %1").arg(tip.modelData)
                    onClicked: root.form.removeTip(tip.index)
                }
            }
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap
            Choice {
                id: tipLimb
                objectName: "tipLimb"
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignBottom
                label: qsTr("A limb whose tip you measured and drew where it is now")
                model: root.form.limbs
            }
            PlainButton {
                objectName: "addTipButton"
                Layout.alignment: Qt.AlignBottom
                enabled: tipLimb.currentIndex >= 0
                text: qsTr("Note its tip")
                onClicked: root.form.addTip(tipLimb.currentIndex)
            }
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap
            Field {
                objectName: "visitLeaf"
                Layout.fillWidth: true
                label: qsTr("Share of the leaf that went")
                hint: root.form.leafHint
                text: root.form.leaf
                onTyped: (text) => root.form.leaf = text
            }
            Field {
                objectName: "visitNextDue"
                Layout.fillWidth: true
                label: qsTr("Come again on")
                text: root.form.nextDue
                onTyped: (text) => root.form.nextDue = text
            }
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap
            Field {
                objectName: "visitAir"
                Layout.fillWidth: true
                label: qsTr("Warmth in the shade")
                text: root.form.air
                onTyped: (text) => root.form.air = text
            }
            Field {
                objectName: "visitHumidity"
                Layout.fillWidth: true
                label: qsTr("Humidity")
                text: root.form.humidity
                onTyped: (text) => root.form.humidity = text
            }
            Field {
                objectName: "visitGust"
                Layout.fillWidth: true
                label: qsTr("Gusts")
                text: root.form.gust
                onTyped: (text) => root.form.gust = text
            }
        }
        Field {
            objectName: "visitNote"
            Layout.fillWidth: true
            label: qsTr("In your words")
            text: root.form.note
            onTyped: (text) => root.form.note = text
        }

        Heading { text: qsTr("Photos") }
        Repeater {
            model: root.form.photoFiles
            RowLayout {
                id: taken
                required property string modelData
                required property int index
                Layout.fillWidth: true
                spacing: Theme.gap
                PhotoPicture {
                    Layout.preferredWidth: 96
                    Layout.preferredHeight: 72
                    photos: root.photos
                    file: taken.modelData
                    colours: Theme.drawing
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("Photo %1").arg(taken.index + 1)
                }
                Field {
                    objectName: "takenNote" + taken.index
                    Layout.fillWidth: true
                    Layout.alignment: Qt.AlignVCenter
                    label: qsTr("Words under it")
                    text: root.form.photoNotes[taken.index] ?? ""
                    onTyped: (text) => root.form.setPhotoNote(taken.index, text)
                }
                PlainButton {
                    objectName: "removeTaken" + taken.index
                    Layout.alignment: Qt.AlignBottom
                    text: qsTr("Remove")
                    Accessible.name: qsTr("Remove photo %1").arg(taken.index + 1)
                    onClicked: root.form.removePhoto(taken.index)
                }
            }
        }
        PhotoStrip {
            Layout.fillWidth: true
            photos: root.photos
            names: "form"
            onPhotosGiven: (files) => root.form.addPhotos(files)
        }

        Text {
            objectName: "visitProblem"
            Layout.fillWidth: true
            visible: text.length > 0
            text: root.form.problem
            font.pixelSize: Theme.body
            font.weight: Font.DemiBold
            color: Theme.grave
            wrapMode: Text.WordWrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.topMargin: Theme.gap
            Item { Layout.fillWidth: true }
            PlainButton {
                objectName: "cancelVisitButton"
                text: qsTr("Cancel")
                onClicked: root.form.close()
            }
            PlainButton {
                objectName: "saveVisitButton"
                primary: true
                text: qsTr("Write it in the diary")
                onClicked: root.form.save()
            }
        }
    }
}
