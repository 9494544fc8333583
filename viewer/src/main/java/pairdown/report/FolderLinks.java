package pairdown.report;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Links to the reports that lie in attempts' folders. */
record FolderLinks(Path season, Path page) implements SeasonReport.ReportLinks {
    @Override
    public String of(String folder) {
        Path report = season.resolve(folder).resolve("debrief").resolve("report.html");
        Path from = page.toAbsolutePath().normalize();
        Path to = report.toAbsolutePath().normalize();
        boolean near = from.getRoot() != null && from.getRoot().equals(to.getRoot());
        return near && Files.isRegularFile(report) ? address(from.relativize(to)) : "";
    }

    private static String address(Path relative) {
        List<String> names = new ArrayList<>();
        relative.forEach(
                name ->
                        names.add(
                                URLEncoder.encode(name.toString(), StandardCharsets.UTF_8)
                                        .replace("+", "%20")));
        return String.join("/", names);
    }
}
