/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.shipping;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The text that says which third-party bundles the product ships, in which version, under which licence. */
final class Notice {

    private static final String HEAD = """
            Ferrule
            Copyright (c) 2026 the Ferrule authors.

            This program is made available under the terms of the Eclipse Public License 2.0, see LICENSE.

            The product archives hold these bundles of other projects, each with its own licence text and
            notices inside. This list is made by the build from what it packed: bundle, version, licence (SPDX).

            """;

    private final Licences licences;

    Notice(Licences licences) {
        this.licences = licences;
    }

    /**
     * Writes the notice.
     *
     * @param bundles what is shipped, in any order; the same bundle may occur once for each platform
     * @return the text, with one line for each third-party bundle
     */
    String of(Collection<Bundle> bundles) {
        List<String> lines = bundles.stream().filter(bundle -> !bundle.isOwn())
                .sorted(Comparator.comparing(Bundle::name).thenComparing(Bundle::version))
                .map(this::line).distinct().toList();
        return HEAD + lines.stream().collect(Collectors.joining("\n", "", "\n"));
    }

    private String line(Bundle bundle) {
        return bundle.name() + "  " + bundle.release() + "  " + licences.of(bundle);
    }
}
