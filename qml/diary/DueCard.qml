pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What is due in the garden, overdue first, and the way into a visit and out to a calendar.
Card {
    id: root

    required property DiaryViewModel diary

    objectName: "dueCard"
    question: qsTr("What is due in the garden?")
    headline: root.diary.dueHeadline
    tone: root.diary.dueTone
    stale: root.diary.isBusy

    Repeater {
        id: dueList
        model: root.diary.due
        DueRow {
            onChosen: (id) => root.diary.chooseTree(id)
            onDone: (id) => root.diary.startVisit(id)
        }
    }
    PlainButton {
        objectName: "calendarButton"
        Layout.topMargin: Theme.gap
        text: qsTr("Put it in my calendar\u2026")
        enabled: dueList.count > 0
        onClicked: dialog.open()
    }
    Note {
        text: qsTr("Writes a file that calendar programs import. Importing a newer one moves the reminders and adds none twice.")
    }
    FileDialog {
        id: dialog
        title: qsTr("Write the reminders for a calendar")
        fileMode: FileDialog.SaveFile
        defaultSuffix: "ics"
        nameFilters: [qsTr("Calendars (*.ics)")]
        selectedFile: root.diary.suggestedCalendar
        onAccepted: root.diary.exportCalendar(selectedFile)
    }
}
