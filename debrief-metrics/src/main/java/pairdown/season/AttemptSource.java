package pairdown.season;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pairdown.attempt.Attempt;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debriefer;
import pairdown.track.UnusableInputException;

/** One attempt's summary, made from its logs. Whatever is wrong with it is its own affair. */
final class AttemptSource implements SeasonCache.Source {
    private final Path folder;
    private final String name;
    private final SeasonSettings settings;
    private Optional<Attempt> opened = Optional.empty();
    private Optional<String> refused = Optional.empty();

    /**
     * @param name of the folder, relative to the season's
     */
    AttemptSource(Path folder, String name, SeasonSettings settings) {
        this.folder = folder;
        this.name = name;
        this.settings = settings;
    }

    @Override
    public List<Path> files() {
        open();
        return opened.map(FolderContent::named).orElse(List.of());
    }

    @Override
    public AttemptSummary summary() {
        open();
        try {
            return opened.isPresent()
                    ? new Summariser(settings)
                            .summarise(Debriefer.debrief(opened.get(), step -> {}), name)
                    : unusable(refused.orElse("can't be opened"));
        } catch (UnusableInputException e) {
            return unusable(e.messageFor(folder, name));
        } catch (RuntimeException e) {
            // A defect met in one attempt must not cost the team the other attempts of the day.
            return unusable("defect in Pairdown: " + e);
        }
    }

    private void open() {
        if (opened.isPresent() || refused.isPresent()) {
            return;
        }
        try {
            opened = Optional.of(AttemptFolder.open(folder));
        } catch (UnusableInputException e) {
            refused = Optional.of(e.messageFor(folder, name));
        } catch (RuntimeException e) {
            refused = Optional.of("defect in Pairdown: " + e);
        }
    }

    private AttemptSummary unusable(String reason) {
        return AttemptSummary.unusable(folder.getFileName().toString(), name, reason);
    }
}
