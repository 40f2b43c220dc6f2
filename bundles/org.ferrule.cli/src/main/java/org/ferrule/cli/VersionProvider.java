/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import picocli.CommandLine.IVersionProvider;

/** Reads the version from the manifest of the command line's jar. */
final class VersionProvider implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Main.class.getPackage().getImplementationVersion();
        return new String[] { "ferrule " + (version == null ? "(built from source)" : version) };
    }
}
