import QtQuick
import QtTest
import Underbough.App
import Underbough.Test
import Underbough.Ui

/// The diary page and the day check, driven with mouse and keys as a gardener would.
TestCase {
    id: testCase
    name: "Diary"
    when: windowShown

    TestPages { id: pages }
    Main {
        id: window
        visible: true
        garden: pages.garden
        side: pages.side
        plan: pages.plan
        round: pages.round
        conditions: pages.conditions
        answers: pages.answers
        work: pages.work
        light: pages.light
        diary: pages.diary
        day: pages.day
        paper: pages.paper
        underlay: pages.underlay
        grounds: pages.grounds
        why: pages.why
        offers: pages.offers
        stages: pages.stages
        newGarden: pages.newGarden
        addTree: pages.addTree
        planEditor: pages.planEditor
        thing: pages.thing
        tree: pages.tree
        limb: pages.limb
        limbShape: pages.limbShape
    }

    function child(name) {
        const item = findChild(window.contentItem, name)
        verify(item, name)
        return item
    }
    function settle() {
        tryCompare(pages.garden, "isBusy", false, 60000)
        tryCompare(pages.diary, "isBusy", false, 60000)
    }
    function write(name, text) {
        const field = child(name)
        field.input.forceActiveFocus()
        field.input.selectAll()
        for (const letter of text)
            keyClick(letter)
    }
    function init() {
        pages.restart()
        window.showsDiary = false
        window.requestActivate()
        settle()
        mouseClick(child("diaryButton"))
        tryCompare(child("diaryPage"), "visible", true)
        tryVerify(() => child("timeline").width > 300) // it is laid out
        waitForRendering(window.contentItem)
    }

    function test_1_theDueListStandsBesideTheTimeline() {
        verify(pages.diary.due.rowCount() > 0)
        verify(child("dueCard").headline.length > 0)
        verify(child("dueTree0").visible)
        compare(pages.diary.visits.rowCount(), 0)
        mouseClick(child("diaryButton"))
        tryCompare(child("diaryPage"), "visible", false)
        verify(child("sideDrawing").visible)
    }

    function test_2_aVisitIsWrittenByHandSeenAndUndone() {
        mouseClick(child("newVisitButton"))
        tryCompare(child("visitSheet"), "visible", true)
        write("visitDate", "2025-06-20")
        write("visitBy", "Ann")
        child("cutKind").currentIndex = 2
        child("cutLimb").currentIndex = 1
        write("cutAmount", "10 %")
        mouseClick(child("addCutButton"))
        compare(pages.diary.form.freeCuts.length, 1)
        const save = child("saveVisitButton")
        save.forceActiveFocus()
        verify(save.activeFocus)
        keyClick(Qt.Key_Space)
        compare(pages.diary.form.isOpen, false)
        compare(pages.diary.visits.rowCount(), 1)
        verify(child("visit0").title.indexOf("Ann") > 0)
        verify(pages.garden.isDirty)
        keyClick(Qt.Key_Z, Qt.ControlModifier)
        compare(pages.diary.visits.rowCount(), 0)
    }

    function test_3_doneOpensAFormThatEscapeLeaves() {
        mouseClick(child("dueDone0"))
        compare(pages.diary.form.isOpen, true)
        tryCompare(child("visitSheet"), "visible", true)
        child("visitBy").input.forceActiveFocus()
        keyClick(Qt.Key_Escape)
        compare(pages.diary.form.isOpen, false)
        verify(!pages.garden.isDirty)
    }

    function test_4_whatCantBeReadIsToldOnTheSheet() {
        mouseClick(child("newVisitButton"))
        tryCompare(child("visitSheet"), "visible", true)
        write("visitDate", "soon")
        child("saveVisitButton").clicked()
        compare(pages.diary.form.isOpen, true)
        verify(child("visitProblem").visible)
        verify(child("visitProblem").text.length > 0)
        pages.diary.form.close()
    }

    function test_5_everyControlOfTheSheetTakesTheKeyboard() {
        mouseClick(child("newVisitButton"))
        tryCompare(child("visitSheet"), "visible", true)
        child("visitDate").input.forceActiveFocus()
        const met = {}
        for (let i = 0; i < 40; ++i) {
            let item = window.activeFocusItem
            while (item && !item.objectName)
                item = item.parent
            if (item)
                met[item.objectName.replace(/Input$/, "")] = true
            keyClick(Qt.Key_Tab)
        }
        for (const name of ["visitDate", "visitBy", "cutKind", "cutLimb", "addCutButton", "visitLeaf",
                            "visitNextDue", "visitAir", "visitHumidity", "visitGust", "visitNote",
                            "cancelVisitButton", "saveVisitButton"])
            verify(met[name], name)
        pages.diary.form.close()
    }

    function test_7_aPhotoIsDroppedOnAVisitShownLargeAndTakenOut() {
        mouseClick(child("newVisitButton"))
        tryCompare(child("visitSheet"), "visible", true)
        pages.diary.form.save()
        compare(pages.diary.visits.rowCount(), 1)
        const strip = child("visit0PhotoDrop")
        waitForRendering(window.contentItem)
        verify(pages.drop(strip, pages.picture("From the gate.jpg")))
        const thumb = child("visit0Photo0")
        thumb.forceActiveFocus()
        keyClick(Qt.Key_Space)
        const large = findChild(window, "photoSheet")
        tryCompare(large, "opened", true)
        compare(pages.diary.photos.count, 1)
        const note = findChild(window, "photoNoteInput")
        note.forceActiveFocus()
        for (const letter of "bark")
            keyClick(letter)
        keyClick(Qt.Key_Return)
        compare(pages.diary.photos.note, "bark")
        findChild(window, "photoRemove").clicked()
        tryCompare(large, "visible", false)
        compare(findChild(window.contentItem, "visit0Photo0"), null)
        keyClick(Qt.Key_Z, Qt.ControlModifier)
        tryVerify(() => findChild(window.contentItem, "visit0Photo0") !== null)
        compare(child("visit0Photo0").note, "bark")
    }

    function test_8_photosOfAVisitBeingWrittenAreShownInTheSheet() {
        mouseClick(child("newVisitButton"))
        tryCompare(child("visitSheet"), "visible", true)
        verify(pages.diary.form.addPhotos([pages.picture("a.jpg")]))
        verify(child("takenNote0").visible)
        child("removeTaken0").clicked()
        compare(pages.diary.form.photoFiles.length, 0)
        pages.diary.form.close()
    }

    function test_6_theDayIsCheckedOnTheWorkPage() {
        mouseClick(child("diaryButton"))
        write("dayGust", "70 km/h")
        compare(child("dayCard").tone, Tone.Grave)
        write("dayGust", "5 km/h")
        write("dayAir", "20")
        compare(child("dayCard").tone, Tone.Plain)
    }
}
