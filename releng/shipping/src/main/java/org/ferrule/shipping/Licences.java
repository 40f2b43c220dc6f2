/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.shipping;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/**
 * Names the licence of a bundle by its SPDX expression. A table of the project comes first, then the manifest, then
 * the about.html that bundles of the platform carry. There is no default: a bundle without a licence is an error.
 */
final class Licences {

    private static final Map<String, String> WORDINGS = wordings();

    private final Properties table;

    Licences(Properties table) {
        this.table = table;
    }

    static Licences fromTable(Path file) {
        Properties table = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            table.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
        return new Licences(table);
    }

    /** What manifests write, in lower case, and the expression it stands for; the first that occurs counts. */
    private static Map<String, String> wordings() {
        Map<String, String> wordings = new LinkedHashMap<>();
        wordings.put("apache-2.0", "Apache-2.0");
        wordings.put("apache.org/licenses/license-2.0", "Apache-2.0");
        wordings.put("bsd-3-clause", "BSD-3-Clause");
        wordings.put("0bsd", "0BSD");
        wordings.put("opensource.org/license/mit", "MIT");
        wordings.put("eclipse public license - v 2.0", "EPL-2.0");
        wordings.put("eclipse.org/legal/epl-2.0", "EPL-2.0");
        wordings.put("eclipse.org/legal/epl-v20", "EPL-2.0");
        wordings.put("epl-2.0", "EPL-2.0");
        return wordings;
    }

    /**
     * Names the licence of a bundle.
     *
     * @param bundle the bundle
     * @return an SPDX licence expression
     * @throws ShippingException if neither the table nor the bundle names one
     */
    String of(Bundle bundle) {
        String listed = table.getProperty(bundle.name());
        if (listed != null) {
            return listed;
        }
        return bundle.licenceHeader().or(bundle::about).flatMap(Licences::recognise)
                .orElseThrow(() -> new ShippingException(bundle.file()
                        + " names no licence that is known here: add " + bundle.name() + " to licences.properties"));
    }

    private static Optional<String> recognise(String text) {
        String lower = text.strip().toLowerCase(Locale.ROOT);
        if (lower.equals("mit")) {
            return Optional.of("MIT");
        }
        return WORDINGS.entrySet().stream().filter(e -> lower.contains(e.getKey())).map(Map.Entry::getValue)
                .findFirst();
    }
}
