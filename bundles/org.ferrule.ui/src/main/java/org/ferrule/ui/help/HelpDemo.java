/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.help;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.osgi.framework.FrameworkUtil;

/**
 * The demo that the build packs into this bundle, as pictures of the help need it. Every document is read anew, so that
 * whoever asks may change what it gets.
 */
public final class HelpDemo {

    /** The only rule set of the demo. */
    public static final String RULES = "house.rules.json";

    private static final String FOLDER = "demo/";

    private HelpDemo() {
    }

    /**
     * Reads a document.
     *
     * @param name the name of its file
     * @throws CoreException if it is not there or not of that type
     */
    public static <D extends Document> D document(String name, Class<D> type) throws CoreException {
        URL entry = FrameworkUtil.getBundle(HelpDemo.class).getEntry(FOLDER + name);
        if (entry == null) {
            throw new CoreException(Status.error("There is no " + name + " in the demo"));
        }
        try (InputStream stream = entry.openStream()) {
            return new JsonDocuments().read(stream, name).document().filter(type::isInstance).map(type::cast)
                    .orElseThrow(() -> new CoreException(Status.error(name + " cannot be read")));
        } catch (IOException e) {
            throw new CoreException(Status.error(name + " cannot be read", e));
        }
    }

    /**
     * Reads libraries of devices.
     *
     * @param names the names of their files
     * @throws CoreException if one is not there
     */
    public static List<LibraryReader> libraries(List<String> names) throws CoreException {
        List<LibraryReader> libraries = new ArrayList<>();
        for (String name : names) {
            libraries.add(new LibraryReader(name, document(name, DeviceLibrary.class)));
        }
        return libraries;
    }

    /**
     * Reads the devices of some libraries.
     *
     * @param names the names of their files
     * @throws CoreException if one is not there
     */
    public static Catalogue devices(String... names) throws CoreException {
        return Catalogue.of(libraries(List.of(names)));
    }

    /**
     * Reads the rules.
     *
     * @throws CoreException if they are not there, or lack something
     */
    public static RuleSet rules() throws CoreException {
        try {
            return RuleTranslator.translate(document(RULES, org.ferrule.model.RuleSet.class));
        } catch (RuleSetException e) {
            throw new CoreException(Status.error("The rules of the demo cannot be used", e));
        }
    }
}
