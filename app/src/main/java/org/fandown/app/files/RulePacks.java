package org.fandown.app.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Node;
import org.fandown.document.Position;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.PackReader;
import org.fandown.rulebook.Rulebook;
import org.fandown.rulebook.UnfitPackException;

/**
 * The rule packs that come with the program and those of a site's own folder. Packs are read only
 * when a place needs them, since reading them all takes longer than judging one inspection. Safe
 * for use by several threads.
 */
public final class RulePacks {
    private static final String FOLDER = "/org/fandown/rulebook/";
    private static final String LIST = FOLDER + "places.txt";

    private final Map<PlaceCode, Supplier<Node>> documents = new TreeMap<>();
    private final Map<PlaceCode, Pack> read = new TreeMap<>();

    private RulePacks() {}

    /** The packs that come with the program. */
    public static RulePacks builtIn() {
        RulePacks packs = new RulePacks();
        for (String code : resource(LIST).lines().map(String::strip).toList()) {
            if (!code.isEmpty()) {
                String name = code + ".yaml";
                packs.documents.put(
                        new PlaceCode(code),
                        () -> DocumentText.yaml(name, resource(FOLDER + name)));
            }
        }
        return packs;
    }

    /**
     * These packs and those of a folder: every file there that ends in {@code .yaml}, {@code .yml}
     * or {@code .json}.
     *
     * @throws DocumentException if a file is not a rule pack, is one of a place that has a pack
     *     already, or does not fit the packs it refers to
     */
    public RulePacks and(Path folder) {
        RulePacks all = new RulePacks();
        all.documents.putAll(documents);
        all.read.putAll(read);
        List<PlaceCode> added = new ArrayList<>();
        for (Path file : packFiles(folder)) {
            Node document = DocumentFiles.read(file);
            Pack pack = PackReader.read(document);
            if (all.documents.containsKey(pack.place())) {
                throw twice(document, pack.place(), added.contains(pack.place()));
            }
            all.documents.put(pack.place(), () -> document);
            all.read.put(pack.place(), pack);
            added.add(pack.place());
        }
        added.forEach(all::requireFit);
        return all;
    }

    private static DocumentException twice(Node document, PlaceCode place, boolean inFolder) {
        return Fields.of(document)
                .refuse(
                        "place",
                        inFolder
                                ? "is the place of another file in this folder"
                                : "has a pack that comes with the program",
                        "a code of the site's own, such as " + siteOf(place),
                        inFolder
                                ? "Put the rules of one place into one file."
                                : "Take a code of the site's own and write parent: "
                                        + place
                                        + "; the parent's rules then hold too.");
    }

    /** A site's code: below a subdivision, or else one that ISO 3166 leaves to its users. */
    private static String siteOf(PlaceCode place) {
        String site = place + "-YARD";
        return PlaceCode.isWellFormed(site) ? site : "XA";
    }

    private void requireFit(PlaceCode place) {
        try {
            rulebookFor(place);
        } catch (UnfitPackException e) {
            Supplier<Node> document = Objects.requireNonNull(documents.get(e.place()));
            throw UnfitPacks.refusal(e, document.get());
        }
    }

    private static List<Path> packFiles(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw refusal(folder, "this is not a folder", "Correct the path given with --packs.");
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(RulePacks::isPack).sorted().toList();
        } catch (IOException e) {
            throw refusal(folder, "the folder cannot be read", "Check its permissions.");
        }
    }

    private static DocumentException refusal(Path folder, String problem, String nextStep) {
        return new DocumentException(
                Position.inFile(folder.toString()),
                "",
                "",
                problem,
                "a folder with rule packs in it",
                nextStep);
    }

    private static boolean isPack(Path file) {
        String name = file.getFileName().toString();
        return Files.isRegularFile(file)
                && (name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json"));
    }

    /** The places with a pack. */
    public List<PlaceCode> places() {
        return List.copyOf(documents.keySet());
    }

    /** A rulebook of one place and its ancestors; empty if the place has no pack. */
    public Optional<Rulebook> rulebookFor(PlaceCode place) {
        if (!documents.containsKey(place)) {
            return Optional.empty();
        }
        List<Pack> lineage = new ArrayList<>();
        Optional<PlaceCode> next = Optional.of(place);
        while (next.isPresent()
                && documents.containsKey(next.get())
                && !holds(lineage, next.get())) {
            Pack pack = pack(next.get());
            lineage.add(pack);
            next = pack.parent();
        }
        return Optional.of(Rulebook.of(lineage));
    }

    private static boolean holds(List<Pack> packs, PlaceCode place) {
        return packs.stream().anyMatch(p -> p.place().equals(place));
    }

    /** A rulebook of every place. */
    public Rulebook all() {
        return Rulebook.of(documents.keySet().stream().map(this::pack).toList());
    }

    /**
     * The pack of a place.
     *
     * @throws IllegalArgumentException if the place has no pack
     */
    public synchronized Pack pack(PlaceCode place) {
        Pack known = read.get(place);
        if (known != null) {
            return known;
        }
        Pack pack = PackReader.read(document(place));
        read.put(place, pack);
        return pack;
    }

    /**
     * The pack of a place as it was written.
     *
     * @throws IllegalArgumentException if the place has no pack
     */
    public Node document(PlaceCode place) {
        Supplier<Node> document = documents.get(place);
        if (document == null) {
            throw new IllegalArgumentException("There is no rule pack for " + place + ".");
        }
        return document.get();
    }

    private static String resource(String name) {
        return new String(ProgramFiles.bytes(name), StandardCharsets.UTF_8);
    }
}
