/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.help.HelpDemo;

/**
 * The devices and rule sets of all documents of a project, as they stand in their editors. Immutable.
 *
 * @param catalogue the devices of all libraries that can be read
 * @param rules the rule sets that can be used, by their paths in the project
 */
public record ProjectDevices(Catalogue catalogue, Map<String, RuleSet> rules) {

    /** There is no project. */
    public static final ProjectDevices NONE = new ProjectDevices(new Catalogue(List.of(), List.of()), Map.of());

    /** Checks that nothing is missing. */
    public ProjectDevices {
        rules = Collections.unmodifiableMap(new TreeMap<>(rules));
    }

    /**
     * Reads the documents of a project; broken ones are left out, their problems stand in the Problems view.
     *
     * @throws CoreException if a file cannot be read
     */
    public static ProjectDevices read(IProject project) throws CoreException {
        List<LibraryReader> libraries = new ArrayList<>();
        Map<String, RuleSet> rules = new TreeMap<>();
        for (IFile file : documents(project)) {
            String path = file.getProjectRelativePath().toString();
            Optional<Document> document = Services.get(DocumentRecords.class).of(file).document();
            document.filter(DeviceLibrary.class::isInstance)
                    .ifPresent(library -> libraries.add(new LibraryReader(path, (DeviceLibrary) library)));
            document.filter(org.ferrule.model.RuleSet.class::isInstance)
                    .flatMap(set -> translate((org.ferrule.model.RuleSet) set)).ifPresent(set -> rules.put(path, set));
        }
        return new ProjectDevices(Catalogue.of(libraries), rules);
    }

    /**
     * Reads libraries of the demo, with its rules, for the pictures of the help.
     *
     * @param libraries the names of their files
     * @throws CoreException if one is not there
     */
    public static ProjectDevices demo(String... libraries) throws CoreException {
        return new ProjectDevices(HelpDemo.devices(libraries), Map.of(HelpDemo.RULES, HelpDemo.rules()));
    }

    private static List<IFile> documents(IProject project) throws CoreException {
        List<IFile> files = new ArrayList<>();
        if (project.isAccessible()) {
            project.accept((IResource resource) -> {
                if (DocumentFiles.isDocument(resource)) {
                    files.add((IFile) resource);
                }
                return true;
            });
        }
        return files;
    }

    /** A rule set that lacks something cannot be chosen; what it lacks is one of its own problems. */
    private static Optional<RuleSet> translate(org.ferrule.model.RuleSet set) {
        try {
            return Optional.of(RuleTranslator.translate(set));
        } catch (RuleSetException e) {
            return Optional.empty();
        }
    }
}
