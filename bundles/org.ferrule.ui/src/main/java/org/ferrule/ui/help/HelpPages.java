/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.help;

import java.net.URL;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.Platform;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.ferrule.ui.internal.help.HelpView;

/** The pages that bundles contribute at the extension point {@code org.ferrule.ui.helpPages}. */
public final class HelpPages {

    /** The page that the help opens with. */
    public static final String FIRST = "org.ferrule.ui/help/overview.html";

    private static final String POINT = "org.ferrule.ui.helpPages";
    private static final int USUAL_ORDER = 100;

    private HelpPages() {
    }

    /** Returns all pages in their order. */
    public static List<HelpPage> all() {
        return Stream.of(Platform.getExtensionRegistry().getConfigurationElementsFor(POINT))
                .filter(element -> "page".equals(element.getName())).map(HelpPages::page)
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingInt(HelpPage::order).thenComparing(HelpPage::title))
                .toList();
    }

    /** Returns the page with the id. */
    public static Optional<HelpPage> find(String id) {
        return all().stream().filter(page -> page.id().equals(id)).findFirst();
    }

    /** Returns the page that explains an editor or a view. */
    public static Optional<HelpPage> about(String partId) {
        return all().stream().filter(page -> page.parts().contains(partId)).findFirst();
    }

    /**
     * Opens a page in the help view.
     *
     * @throws PartInitException if the view cannot be opened
     */
    public static void open(IWorkbenchPage page, String id) throws PartInitException {
        ((HelpView) page.showView(HelpView.ID)).showPage(id);
    }

    private static Optional<HelpPage> page(IConfigurationElement element) {
        String bundle = element.getContributor().getName();
        String file = element.getAttribute("file");
        URL url = FileLocator.find(Platform.getBundle(bundle), IPath.fromPortableString(file), null);
        if (url == null) {
            ILog.of(HelpPages.class).error("There is no help page " + file + " in " + bundle);
            return Optional.empty();
        }
        return Optional.of(new HelpPage(bundle + "/" + file, element.getAttribute("title"), order(element),
                parts(element), url));
    }

    private static int order(IConfigurationElement element) {
        String order = element.getAttribute("order");
        return order == null ? USUAL_ORDER : Integer.parseInt(order);
    }

    private static Set<String> parts(IConfigurationElement element) {
        String parts = element.getAttribute("parts");
        return parts == null ? Set.of() : Set.of(parts.split("\\s*,\\s*"));
    }
}
