package pairdown.app;

import pairdown.input.Command;
import pairdown.replay.Playback;
import pairdown.replay.Recording;

/** Carries out the actions that change the instant shown. */
final class TimeActions {
    private static final double STEP_S = 0.1;

    private TimeActions() {}

    static boolean apply(Command command, Playback time, Recording recording) {
        switch (command.action()) {
            case PLAY -> time.toggle();
            case TURN -> time.turn();
            case FASTER -> time.faster();
            case SLOWER -> time.slower();
            case REAL_TIME -> time.atRate(1);
            case STEP_ON -> time.step(STEP_S);
            case STEP_BACK -> time.step(-STEP_S);
            case SECOND_ON -> time.step(1);
            case SECOND_BACK -> time.step(-1);
            case TEN_ON -> time.step(10);
            case TEN_BACK -> time.step(-10);
            case TO_START -> time.seek(time.span().start_s());
            case TO_END -> time.seek(time.span().end_s());
            case NEXT_EVENT -> time.toNext(recording.eventTimes_s());
            case PREVIOUS_EVENT -> time.toPrevious(recording.eventTimes_s());
            case LOOP -> time.markLoop();
            case SEEK -> time.seek(command.value());
            default -> {
                return false;
            }
        }
        return true;
    }
}
