package pairdown.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.attempt.Mark;
import pairdown.attempt.MarksFile;
import pairdown.debrief.Debrief;
import pairdown.gl.Key;
import pairdown.gl.WindowEvent;
import pairdown.gl.WindowEvent.Held;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.input.HitAreas;
import pairdown.input.Keymap;
import pairdown.replay.Desk;
import pairdown.replay.Playback;
import pairdown.replay.Recording;
import pairdown.replay.SyntheticDebrief;
import pairdown.replay.ViewState;
import pairdown.settings.SettingsFile;
import pairdown.settings.ViewerSettings;
import pairdown.track.UnusableInputException;
import pairdown.words.Words;

class FrontTest {
    private static final Debrief DEBRIEF = new SyntheticDebrief().build();

    private final Path folder;
    private final Path attempt;
    private final Desk desk = new Desk(ViewerSettings.DEFAULT);
    private final Operator operator = new Operator(desk);
    private final ViewState view = new ViewState(DEBRIEF);
    private final Playback playback = view.playback();
    private final CountDownLatch mayLoad = new CountDownLatch(1);
    private final Semaphore woken = new Semaphore(0);
    private final Opening<Path> opening = new Opening<>(this::load, woken::release);
    private final Front front;
    private final List<Command> handedOn = new ArrayList<>();

    FrontTest(@TempDir Path folder) throws IOException {
        this.folder = folder;
        this.attempt = Files.createDirectory(folder.resolve("attempt"));
        Panels panels = new Panels(Words.of(Locale.ENGLISH), Keymap.standard());
        panels.show(new Board(Recording.of(DEBRIEF), Words.of(Locale.ENGLISH)), view, operator);
        front = new Front(desk, operator, Keymap.standard(), opening, SettingsFile.in(folder));
        front.opened(attempt);
    }

    @AfterEach
    void shut() {
        mayLoad.countDown();
        opening.close();
    }

    private Path load(Opening.Wish wish, java.util.function.Consumer<Desk.Progress> progress)
            throws UnusableInputException {
        try {
            assertTrue(mayLoad.await(10, TimeUnit.SECONDS));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Path from = wish.paths().get(0);
        progress.accept(new Desk.Progress("reading", 0.5));
        if (from.endsWith("broken")) {
            throw new UnusableInputException("no logs", from.toString(), "put the logs there");
        }
        if (from.endsWith("huge")) {
            throw new OutOfMemoryError("made up");
        }
        return from;
    }

    private void take(WindowEvent event) {
        front.take(event, new HitAreas(1), e -> {}, handedOn::add);
    }

    private void press(Key key) {
        take(new WindowEvent.KeyTurned(key, true, false, Held.NOTHING));
    }

    private void type(String text) {
        text.codePoints().forEach(c -> take(new WindowEvent.Typed(c)));
    }

    private Optional<Path> awaitOpened() throws InterruptedException {
        for (int i = 0; i < 50; i++) {
            Optional<Path> opened = opening.poll(desk).map(Opening.Opened::result);
            if (opened.isPresent() || desk.notice().isPresent()) {
                return opened;
            }
            assertTrue(woken.tryAcquire(10, TimeUnit.SECONDS), "nothing came of it");
        }
        return Optional.empty();
    }

    @Test
    void aMarkIsKeptBesideTheLogsWithItsNote() throws UnusableInputException {
        playback.seek(106);
        press(Key.M);
        type("m");
        type("both steady");
        press(Key.ENTER);
        List<Mark> marks = MarksFile.read(attempt);
        assertEquals(1, marks.size());
        assertEquals("both steady", marks.get(0).note());
        assertEquals(DEBRIEF.axis().instant(106), marks.get(0).time());
        assertEquals(marks, desk.marks());
    }

    @Test
    void aTouchSeenNamesTheChosenFlyerAndTheLead() throws UnusableInputException {
        take(new WindowEvent.KeyTurned(Key.M, true, false, new Held(true, false, false)));
        type("M");
        type("video: helmet.mp4 5120");
        press(Key.ENTER);
        Mark mark = MarksFile.read(attempt).get(0);
        assertEquals(Mark.Kind.TOUCH, mark.kind());
        assertEquals(List.of("blue", "lead"), mark.participants());
        assertEquals(Optional.of("helmet.mp4 5120"), mark.video());
    }

    @Test
    void theChosenMarkCanBeTakenAway() throws UnusableInputException {
        press(Key.M);
        press(Key.ENTER);
        front.apply(new Command(Action.CHOOSE_MARK, 0), handedOn::add);
        press(Key.DELETE);
        assertEquals(List.of(), MarksFile.read(attempt));
    }

    private void mark(String note) {
        press(Key.M);
        type("m");
        type(note);
        press(Key.ENTER);
    }

    /** Another window on the same attempt has marked since this one read the marks. */
    @Test
    void whatAnotherWindowMarkedStays() throws Exception {
        Mark theirs =
                new Mark(
                        DEBRIEF.axis().instant(90),
                        Mark.Kind.MOMENT,
                        List.of(),
                        "theirs",
                        Optional.empty());
        MarksFile.write(attempt, List.of(theirs));
        playback.seek(106);
        mark("ours");
        assertEquals(
                List.of("theirs", "ours"),
                MarksFile.read(attempt).stream().map(Mark::note).toList());
        assertEquals(2, desk.marks().size());
    }

    @Test
    void aDamagedMarksFileIsNotWrittenOver() throws IOException {
        Path file = attempt.resolve(MarksFile.NAME);
        Files.writeString(file, "{\"format\": \"pairdown-marks\", \"vers");
        mark("ours");
        assertTrue(desk.notice().orElseThrow().isProblem());
        assertTrue(Files.readString(file).endsWith("\"vers"));
    }

    @Test
    void anAttemptDeletedMeanwhileIsNotMadeAnewByAMark() throws IOException {
        Files.delete(attempt);
        mark("both steady");
        assertFalse(Files.exists(attempt));
        assertTrue(desk.notice().orElseThrow().text().contains("gone"));
    }

    /**
     * A place that can't be written, whoever the person is: a folder stands where the file goes.
     */
    @Test
    void whatCouldNotBeKeptCanBeTypedOn() throws IOException {
        Files.createDirectories(attempt.resolve(MarksFile.NAME).resolve("in the way"));
        mark("both steady");
        assertTrue(desk.notice().orElseThrow().isProblem());
        assertEquals(Desk.Asking.NOTE, desk.asking());
        assertEquals("both steady", desk.typed().toString());
    }

    @Test
    void whileTypingKeysAreLetters() {
        press(Key.T);
        press(Key.SPACE);
        assertFalse(playback.isPlaying());
        press(Key.ESCAPE);
        press(Key.SPACE);
        assertTrue(playback.isPlaying());
    }

    @Test
    void choicesAreFoundAgainAtTheNextStart() {
        press(Key.F12);
        press(Key.U);
        ViewerSettings kept = SettingsFile.in(folder).read().settings();
        assertEquals(desk.settings(), kept);
        assertTrue(kept.isDark());
    }

    @Test
    void whatIsTheScenesIsHandedOn() {
        press(Key.V);
        assertEquals(List.of(Command.of(Action.NEXT_VANTAGE)), handedOn);
    }

    @Test
    void openingGoesOnBehindTheWindow() throws InterruptedException {
        take(new WindowEvent.Dropped(List.of(attempt)));
        assertTrue(opening.isBusy());
        assertTrue(opening.poll(desk).isEmpty());
        assertTrue(desk.progress().isPresent());
        mayLoad.countDown();
        assertEquals(Optional.of(attempt.toAbsolutePath()), awaitOpened());
    }

    @Test
    void aFolderThatCannotBeUsedIsToldWithTheMend() throws InterruptedException {
        mayLoad.countDown();
        take(new WindowEvent.Dropped(List.of(folder.resolve("broken"))));
        assertTrue(awaitOpened().isEmpty());
        assertTrue(desk.notice().orElseThrow().text().contains("put the logs there"));
    }

    @Test
    void anAttemptTooLargeForTheMemoryIsTold() throws InterruptedException {
        mayLoad.countDown();
        take(new WindowEvent.Dropped(List.of(folder.resolve("huge"))));
        assertTrue(awaitOpened().isEmpty());
        assertTrue(desk.notice().orElseThrow().text().contains("-Xmx4g"));
    }

    @Test
    void aLaterWishTakesThePlaceOfAnEarlierOne() throws InterruptedException {
        take(new WindowEvent.Dropped(List.of(folder.resolve("first"))));
        take(new WindowEvent.Dropped(List.of(folder.resolve("second"))));
        mayLoad.countDown();
        assertEquals(Optional.of(folder.resolve("second").toAbsolutePath()), awaitOpened());
    }

    @Test
    void aRecentPlaceThatIsNoPathIsTold() {
        desk.settings(desk.settings().withOpened("\0not a path"));
        front.apply(new Command(Action.OPEN_RECENT, 0), handedOn::add);
        assertTrue(desk.notice().orElseThrow().text().contains("is no path"));
    }
}
