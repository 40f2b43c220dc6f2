/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.extension;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

import org.eclipse.core.runtime.ContributorFactorySimple;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.spi.RegistryStrategy;
import org.ferrule.chart.export.ChartExporter;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.picture.PictureExporter;
import org.ferrule.shelf.sheet.ShelfFormat;

/**
 * What plug-ins add: checks of the solver, exporters of charts and of pictures, formats of shelves. In the workbench the
 * platform's registry knows them;
 * on a plain class path the same {@code plugin.xml} files are read into a registry of our own.
 */
public final class Extensions {
    private static final String CHECKS = "org.ferrule.engine.checks";
    private static final String EXPORTERS = "org.ferrule.engine.exporters";
    private static final String PICTURE_EXPORTERS = "org.ferrule.engine.pictureExporters";
    private static final String SHELF_FORMATS = "org.ferrule.engine.shelfFormats";
    private final IExtensionRegistry registry;

    private Extensions(IExtensionRegistry registry) {
        this.registry = registry;
    }

    /** The extensions of the running platform. */
    public static Extensions ofPlatform() {
        return new Extensions(RegistryFactory.getRegistry());
    }

    /**
     * The extensions of all plug-ins on a class path.
     *
     * @throws ExtensionException when a plug-in's description cannot be read
     */
    public static Extensions ofClassPath(ClassLoader loader) {
        try {
            Object key = new Object();
            IExtensionRegistry registry = RegistryFactory.createRegistry(new ClassPathStrategy(loader), key, key);
            for (URL description : Collections.list(loader.getResources("plugin.xml"))) {
                addDescription(registry, description, key);
            }
            return new Extensions(registry);
        } catch (IOException e) {
            throw new ExtensionException("the plug-ins on the class path cannot be read: " + e.getMessage(), e);
        }
    }

    private static void addDescription(IExtensionRegistry registry, URL description, Object key) throws IOException {
        try (InputStream in = description.openStream()) {
            registry.addContribution(in, ContributorFactorySimple.createContributor(description), false,
                    description.toString(), null, key);
        }
    }

    /** The checks of the solver, in the order that they ask for. */
    public List<FitCheck> checks() {
        return all(CHECKS, "check", FitCheck.class);
    }

    /** The exporters of charts, in the order that they ask for. */
    public List<ChartExporter> exporters() {
        return all(EXPORTERS, "exporter", ChartExporter.class);
    }

    /** The exporters of single pictures, in the order that they ask for. */
    public List<PictureExporter> pictureExporters() {
        return all(PICTURE_EXPORTERS, "exporter", PictureExporter.class);
    }

    /** The formats of shelves, in the order that they ask for. */
    public List<ShelfFormat> shelfFormats() {
        return all(SHELF_FORMATS, "format", ShelfFormat.class);
    }

    private <T> List<T> all(String point, String element, Class<T> type) {
        List<IConfigurationElement> elements = new ArrayList<>();
        for (IConfigurationElement candidate : registry.getConfigurationElementsFor(point)) {
            if (candidate.getName().equals(element)) {
                elements.add(candidate);
            }
        }
        elements.sort(Comparator.comparingInt(Extensions::order));
        return elements.stream().map(e -> create(e, type)).toList();
    }

    private static int order(IConfigurationElement element) {
        String order = element.getAttribute("order");
        try {
            return order == null ? Integer.MAX_VALUE : Integer.parseInt(order);
        } catch (NumberFormatException e) {
            throw new ExtensionException("the order \"" + order + "\" of " + element.getAttribute("class")
                    + " is not a whole number", e);
        }
    }

    private static <T> T create(IConfigurationElement element, Class<T> type) {
        try {
            return type.cast(element.createExecutableExtension("class"));
        } catch (CoreException | ClassCastException e) {
            throw new ExtensionException("the extension " + element.getAttribute("class") + " is no "
                    + type.getSimpleName() + ": " + e.getMessage(), e);
        }
    }

    /** Finds extension classes on a class path, without a platform. */
    private static final class ClassPathStrategy extends RegistryStrategy {
        private final ClassLoader loader;

        ClassPathStrategy(ClassLoader loader) {
            super(null, null);
            this.loader = loader;
        }

        @Override
        public Object createExecutableExtension(org.eclipse.core.runtime.spi.RegistryContributor contributor,
                String className, String overridden) throws CoreException {
            try {
                return loader.loadClass(className).getDeclaredConstructor().newInstance();
            } catch (ReflectiveOperationException e) {
                throw new ExtensionException("the class " + className + " cannot be made", e);
            }
        }
    }
}
