/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import org.ferrule.picture.PictureExporter;
import org.ferrule.picture.contract.PictureExporterContract;

class SvgPictureExporterTest extends PictureExporterContract {

    @Override
    protected PictureExporter exporter() {
        return new SvgPictureExporter();
    }

    @Override
    protected String title(byte[] exported) throws Exception {
        return ParsedSvg.of(exported).all("title").get(0).getTextContent();
    }
}
