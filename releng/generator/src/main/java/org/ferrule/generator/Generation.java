/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EPackage;

/** One run of everything that is generated from {@code ferrule.ecore}, into a scratch folder. */
public final class Generation {

    private static final String MODEL = "org.ferrule.model";
    private static final String EDIT = "org.ferrule.model.edit";

    private static final String SCHEMAS = "docs/schema";

    private final Path root;
    private final Path scratch;

    /**
     * Prepares a run.
     *
     * @param root the root folder of the repository
     * @param scratch a folder that is emptied and filled
     */
    public Generation(Path root, Path scratch) {
        this.root = root;
        this.scratch = scratch;
    }

    /**
     * Generates everything.
     *
     * @return the generated folders beside their places in the repository
     * @throws IOException if a file cannot be read or written
     */
    public List<GeneratedFolder> run() throws IOException {
        empty();
        Path model = copyModel();
        EPackage ecore = new EmfCode(scratch, MODEL, EDIT).generate();
        new SchemaFiles(ecore).write(scratch.resolve(SCHEMAS));
        Labels labels = new Labels(ecore);
        tidying(MODEL, labels).run();
        tidying(EDIT, labels).run();
        tidying(EDIT, labels).takeLabels();
        return List.of(
                new GeneratedFolder(model, bundle(MODEL).resolve("model")),
                sources(MODEL),
                sources(EDIT),
                new GeneratedFolder(scratch.resolve(SCHEMAS), root.resolve(SCHEMAS)));
    }

    private Tidying tidying(String bundle, Labels labels) {
        return new Tidying(scratch.resolve(bundle).resolve("src-gen"), labels);
    }

    private GeneratedFolder sources(String bundle) {
        return new GeneratedFolder(scratch.resolve(bundle).resolve("src-gen"), bundle(bundle).resolve("src-gen"));
    }

    private Path bundle(String name) {
        return root.resolve("bundles").resolve(name);
    }

    private Path copyModel() throws IOException {
        Path target = Files.createDirectories(scratch.resolve(MODEL).resolve("model"));
        for (String file : List.of("ferrule.ecore", "ferrule.genmodel")) {
            Files.copy(bundle(MODEL).resolve("model").resolve(file), target.resolve(file),
                    StandardCopyOption.REPLACE_EXISTING);
        }
        return target;
    }

    private void empty() throws IOException {
        if (Files.exists(scratch)) {
            try (Stream<Path> paths = Files.walk(scratch)) {
                for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
        Files.createDirectories(scratch);
    }
}
