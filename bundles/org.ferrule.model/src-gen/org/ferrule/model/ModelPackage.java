/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * The documents of Ferrule: device libraries, rule sets and fit charts. Every class is one JSON object, every feature one key of the same name, in the order given here; see docs/formats.md. Figures are dimension texts, kept as they were typed. Stations of a shaft are measured from the distal tip, stations of a lumen section from the lumen's proximal entry.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelFactory
 * @model kind="package"
 * @generated
 */
public interface ModelPackage extends EPackage
{
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "model";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "https://ferrule.invalid/model/1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "model";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	ModelPackage eINSTANCE = org.ferrule.model.impl.ModelPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ExtraKeyImpl <em>Extra Key</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ExtraKeyImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getExtraKey()
	 * @generated
	 */
	int EXTRA_KEY = 0;

	/**
	 * The feature id for the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTRA_KEY__KEY = 0;

	/**
	 * The feature id for the '<em><b>Json</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTRA_KEY__JSON = 1;

	/**
	 * The number of structural features of the '<em>Extra Key</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTRA_KEY_FEATURE_COUNT = 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ElementImpl <em>Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ElementImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getElement()
	 * @generated
	 */
	int ELEMENT = 1;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT__EXTRAS = 0;

	/**
	 * The number of structural features of the '<em>Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT_FEATURE_COUNT = 1;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.SourcedImpl <em>Sourced</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.SourcedImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSourced()
	 * @generated
	 */
	int SOURCED = 2;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCED__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCED__SOURCE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCED__PAGE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCED__NOTE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Sourced</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCED_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DocumentImpl <em>Document</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DocumentImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDocument()
	 * @generated
	 */
	int DOCUMENT = 3;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__FORMAT = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__VERSION = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__TITLE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__REVISION = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__DATE = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Sources</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__SOURCES = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Document</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.SourceImpl <em>Source</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.SourceImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSource()
	 * @generated
	 */
	int SOURCE = 4;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__ID = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__TITLE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__KIND = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__REVISION = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__DATE = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Reviewer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__REVIEWER = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Reviewed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__REVIEWED = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Source</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DeviceLibraryImpl <em>Device Library</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DeviceLibraryImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceLibrary()
	 * @generated
	 */
	int DEVICE_LIBRARY = 5;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__EXTRAS = DOCUMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__FORMAT = DOCUMENT__FORMAT;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__VERSION = DOCUMENT__VERSION;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__TITLE = DOCUMENT__TITLE;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__REVISION = DOCUMENT__REVISION;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__DATE = DOCUMENT__DATE;

	/**
	 * The feature id for the '<em><b>Sources</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__SOURCES = DOCUMENT__SOURCES;

	/**
	 * The feature id for the '<em><b>Lines</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__LINES = DOCUMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Devices</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__DEVICES = DOCUMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Bench</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__BENCH = DOCUMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Device Library</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY_FEATURE_COUNT = DOCUMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DevicePartsImpl <em>Device Parts</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DevicePartsImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceParts()
	 * @generated
	 */
	int DEVICE_PARTS = 6;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__ID = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__NAME = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__KIND = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Maker</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__MAKER = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Model</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__MODEL = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__SIZE = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Effective Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__EFFECTIVE_LENGTH = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Takes Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__TAKES_WIRE = SOURCED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Sections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__SECTIONS = SOURCED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Lumens</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__LUMENS = SOURCED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Markers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__MARKERS = SOURCED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Balloon</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__BALLOON = SOURCED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Stent</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__STENT = SOURCED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Cutter</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__CUTTER = SOURCED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Transducer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__TRANSDUCER = SOURCED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__WIRE = SOURCED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Claims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__CLAIMS = SOURCED_FEATURE_COUNT + 16;

	/**
	 * The number of structural features of the '<em>Device Parts</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 17;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DeviceLineImpl <em>Device Line</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DeviceLineImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceLine()
	 * @generated
	 */
	int DEVICE_LINE = 7;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__EXTRAS = DEVICE_PARTS__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__SOURCE = DEVICE_PARTS__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__PAGE = DEVICE_PARTS__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__NOTE = DEVICE_PARTS__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__ID = DEVICE_PARTS__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__NAME = DEVICE_PARTS__NAME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__KIND = DEVICE_PARTS__KIND;

	/**
	 * The feature id for the '<em><b>Maker</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__MAKER = DEVICE_PARTS__MAKER;

	/**
	 * The feature id for the '<em><b>Model</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__MODEL = DEVICE_PARTS__MODEL;

	/**
	 * The feature id for the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__SIZE = DEVICE_PARTS__SIZE;

	/**
	 * The feature id for the '<em><b>Effective Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__EFFECTIVE_LENGTH = DEVICE_PARTS__EFFECTIVE_LENGTH;

	/**
	 * The feature id for the '<em><b>Takes Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__TAKES_WIRE = DEVICE_PARTS__TAKES_WIRE;

	/**
	 * The feature id for the '<em><b>Sections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__SECTIONS = DEVICE_PARTS__SECTIONS;

	/**
	 * The feature id for the '<em><b>Lumens</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__LUMENS = DEVICE_PARTS__LUMENS;

	/**
	 * The feature id for the '<em><b>Markers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__MARKERS = DEVICE_PARTS__MARKERS;

	/**
	 * The feature id for the '<em><b>Balloon</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__BALLOON = DEVICE_PARTS__BALLOON;

	/**
	 * The feature id for the '<em><b>Stent</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__STENT = DEVICE_PARTS__STENT;

	/**
	 * The feature id for the '<em><b>Cutter</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__CUTTER = DEVICE_PARTS__CUTTER;

	/**
	 * The feature id for the '<em><b>Transducer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__TRANSDUCER = DEVICE_PARTS__TRANSDUCER;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__WIRE = DEVICE_PARTS__WIRE;

	/**
	 * The feature id for the '<em><b>Claims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__CLAIMS = DEVICE_PARTS__CLAIMS;

	/**
	 * The number of structural features of the '<em>Device Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE_FEATURE_COUNT = DEVICE_PARTS_FEATURE_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DeviceImpl <em>Device</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DeviceImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDevice()
	 * @generated
	 */
	int DEVICE = 8;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__EXTRAS = DEVICE_PARTS__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__SOURCE = DEVICE_PARTS__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__PAGE = DEVICE_PARTS__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__NOTE = DEVICE_PARTS__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__ID = DEVICE_PARTS__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__NAME = DEVICE_PARTS__NAME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__KIND = DEVICE_PARTS__KIND;

	/**
	 * The feature id for the '<em><b>Maker</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__MAKER = DEVICE_PARTS__MAKER;

	/**
	 * The feature id for the '<em><b>Model</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__MODEL = DEVICE_PARTS__MODEL;

	/**
	 * The feature id for the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__SIZE = DEVICE_PARTS__SIZE;

	/**
	 * The feature id for the '<em><b>Effective Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__EFFECTIVE_LENGTH = DEVICE_PARTS__EFFECTIVE_LENGTH;

	/**
	 * The feature id for the '<em><b>Takes Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__TAKES_WIRE = DEVICE_PARTS__TAKES_WIRE;

	/**
	 * The feature id for the '<em><b>Sections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__SECTIONS = DEVICE_PARTS__SECTIONS;

	/**
	 * The feature id for the '<em><b>Lumens</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__LUMENS = DEVICE_PARTS__LUMENS;

	/**
	 * The feature id for the '<em><b>Markers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__MARKERS = DEVICE_PARTS__MARKERS;

	/**
	 * The feature id for the '<em><b>Balloon</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__BALLOON = DEVICE_PARTS__BALLOON;

	/**
	 * The feature id for the '<em><b>Stent</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__STENT = DEVICE_PARTS__STENT;

	/**
	 * The feature id for the '<em><b>Cutter</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__CUTTER = DEVICE_PARTS__CUTTER;

	/**
	 * The feature id for the '<em><b>Transducer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__TRANSDUCER = DEVICE_PARTS__TRANSDUCER;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__WIRE = DEVICE_PARTS__WIRE;

	/**
	 * The feature id for the '<em><b>Claims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__CLAIMS = DEVICE_PARTS__CLAIMS;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__LINE = DEVICE_PARTS_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Device</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_FEATURE_COUNT = DEVICE_PARTS_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ShaftSectionImpl <em>Shaft Section</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ShaftSectionImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getShaftSection()
	 * @generated
	 */
	int SHAFT_SECTION = 9;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__NAME = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__FROM = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__TO = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Od</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__OD = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Od Proximal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__OD_PROXIMAL = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Od After</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__OD_AFTER = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Od After Proximal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__OD_AFTER_PROXIMAL = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Oval</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__OVAL = SOURCED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Discs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__DISCS = SOURCED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Rigid</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__RIGID = SOURCED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Stiffness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__STIFFNESS = SOURCED_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Shaft Section</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 11;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.OvalImpl <em>Oval</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.OvalImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getOval()
	 * @generated
	 */
	int OVAL = 10;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OVAL__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OVAL__WIDTH = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OVAL__HEIGHT = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Oval</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OVAL_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DiscImpl <em>Disc</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DiscImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDisc()
	 * @generated
	 */
	int DISC = 11;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DISC__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DISC__X = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DISC__Y = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DISC__DIAMETER = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Disc</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DISC_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.LumenImpl <em>Lumen</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.LumenImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLumen()
	 * @generated
	 */
	int LUMEN = 12;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__NAME = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__USE = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Distal At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__DISTAL_AT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Proximal At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__PROXIMAL_AT = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Opens</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__OPENS = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Sections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__SECTIONS = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Lumen</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.LumenSectionImpl <em>Lumen Section</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.LumenSectionImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenSection()
	 * @generated
	 */
	int LUMEN_SECTION = 13;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__NAME = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__FROM = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__TO = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__ID = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Id Distal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__ID_DISTAL = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Lumen Section</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.MarkerImpl <em>Marker</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.MarkerImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getMarker()
	 * @generated
	 */
	int MARKER = 14;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__AT = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__WIDTH = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Marker</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.BalloonImpl <em>Balloon</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.BalloonImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getBalloon()
	 * @generated
	 */
	int BALLOON = 15;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Section</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__SECTION = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__DIAMETER = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__LENGTH = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Nominal Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__NOMINAL_PRESSURE = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Rated Burst Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__RATED_BURST_PRESSURE = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Compliance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__COMPLIANCE = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Balloon</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ComplianceRowImpl <em>Compliance Row</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ComplianceRowImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getComplianceRow()
	 * @generated
	 */
	int COMPLIANCE_ROW = 16;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPLIANCE_ROW__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPLIANCE_ROW__PRESSURE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPLIANCE_ROW__DIAMETER = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Compliance Row</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPLIANCE_ROW_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.StentImpl <em>Stent</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.StentImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getStent()
	 * @generated
	 */
	int STENT = 17;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Section</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__SECTION = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__DIAMETER = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__LENGTH = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Maximum Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__MAXIMUM_DIAMETER = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__MATERIAL = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Strut Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__STRUT_THICKNESS = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Stent</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.CutterImpl <em>Cutter</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.CutterImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getCutter()
	 * @generated
	 */
	int CUTTER = 18;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Section</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__SECTION = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__TYPE = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__DIAMETER = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Cutter</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.TransducerImpl <em>Transducer</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.TransducerImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getTransducer()
	 * @generated
	 */
	int TRANSDUCER = 19;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__TYPE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__AT = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Transducer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.WireTraitsImpl <em>Wire Traits</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.WireTraitsImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getWireTraits()
	 * @generated
	 */
	int WIRE_TRAITS = 20;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Tip Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__TIP_LOAD = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Tip Shape</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__TIP_SHAPE = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Extendable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__EXTENDABLE = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Coating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__COATING = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Wire Traits</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ClaimImpl <em>Claim</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ClaimImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getClaim()
	 * @generated
	 */
	int CLAIM = 21;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__TYPE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__VALUE = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kinds</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__KINDS = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sizes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__SIZES = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Devices</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__DEVICES = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__WIRE = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Alone</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__ALONE = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Covers</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__COVERS = SOURCED_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Claim</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 8;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.BenchResultImpl <em>Bench Result</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.BenchResultImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getBenchResult()
	 * @generated
	 */
	int BENCH_RESULT = 22;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Outer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__OUTER = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Lumen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__LUMEN = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Inner</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__INNER = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__WIRE = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Result</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__RESULT = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Covers</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__COVERS = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Samples</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__SAMPLES = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Bench Result</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.RuleSetImpl <em>Rule Set</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.RuleSetImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getRuleSet()
	 * @generated
	 */
	int RULE_SET = 23;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__EXTRAS = DOCUMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__FORMAT = DOCUMENT__FORMAT;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__VERSION = DOCUMENT__VERSION;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__TITLE = DOCUMENT__TITLE;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__REVISION = DOCUMENT__REVISION;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__DATE = DOCUMENT__DATE;

	/**
	 * The feature id for the '<em><b>Sources</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__SOURCES = DOCUMENT__SOURCES;

	/**
	 * The feature id for the '<em><b>Spans</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__SPANS = DOCUMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Clearances</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__CLEARANCES = DOCUMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>After Use</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__AFTER_USE = DOCUMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Flow Limits</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__FLOW_LIMITS = DOCUMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Allowances</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__ALLOWANCES = DOCUMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Ratio Bands</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__RATIO_BANDS = DOCUMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Chance Limits</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__CHANCE_LIMITS = DOCUMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__CONFIDENCE = DOCUMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Coverage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__COVERAGE = DOCUMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Wire Ahead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__WIRE_AHEAD = DOCUMENT_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Rule Set</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET_FEATURE_COUNT = DOCUMENT_FEATURE_COUNT + 10;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.SpanImpl <em>Span</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.SpanImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSpan()
	 * @generated
	 */
	int SPAN = 24;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Figure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__FIGURE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Kinds</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__KINDS = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__BELOW = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Above</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__ABOVE = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Runs Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__RUNS_LOW = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Span</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ClearanceRuleImpl <em>Clearance Rule</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ClearanceRuleImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getClearanceRule()
	 * @generated
	 */
	int CLEARANCE_RULE = 25;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Outer</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__OUTER = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Inner</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__INNER = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Required</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__REQUIRED = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Clearance Rule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.AfterUseRuleImpl <em>After Use Rule</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.AfterUseRuleImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getAfterUseRule()
	 * @generated
	 */
	int AFTER_USE_RULE = 26;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Kinds</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__KINDS = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Growth Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__GROWTH_LOW = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Growth Centre</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__GROWTH_CENTRE = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Growth High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__GROWTH_HIGH = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>After Use Rule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.FlowLimitImpl <em>Flow Limit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.FlowLimitImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getFlowLimit()
	 * @generated
	 */
	int FLOW_LIMIT = 27;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__USE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Least</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__LEAST = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Flow Limit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.AllowanceImpl <em>Allowance</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.AllowanceImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getAllowance()
	 * @generated
	 */
	int ALLOWANCE = 28;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Purpose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__PURPOSE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__LENGTH = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Allowance</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.RatioBandImpl <em>Ratio Band</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.RatioBandImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getRatioBand()
	 * @generated
	 */
	int RATIO_BAND = 29;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__USE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__LOW = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__HIGH = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Meaning</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__MEANING = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Ratio Band</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ChanceLimitImpl <em>Chance Limit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ChanceLimitImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getChanceLimit()
	 * @generated
	 */
	int CHANCE_LIMIT = 30;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Greatest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT__GREATEST = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Chance Limit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.FitChartImpl <em>Fit Chart</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.FitChartImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getFitChart()
	 * @generated
	 */
	int FIT_CHART = 31;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__EXTRAS = DOCUMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__FORMAT = DOCUMENT__FORMAT;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__VERSION = DOCUMENT__VERSION;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__TITLE = DOCUMENT__TITLE;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__REVISION = DOCUMENT__REVISION;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__DATE = DOCUMENT__DATE;

	/**
	 * The feature id for the '<em><b>Sources</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__SOURCES = DOCUMENT__SOURCES;

	/**
	 * The feature id for the '<em><b>Audience</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__AUDIENCE = DOCUMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Author</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__AUTHOR = DOCUMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Libraries</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__LIBRARIES = DOCUMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Rules</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__RULES = DOCUMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Outer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__OUTER = DOCUMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Inner</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__INNER = DOCUMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Conditions</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__CONDITIONS = DOCUMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Path</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__PATH = DOCUMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Lesion</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__LESION = DOCUMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Paper</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__PAPER = DOCUMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Footnotes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__FOOTNOTES = DOCUMENT_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Fit Chart</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART_FEATURE_COUNT = DOCUMENT_FEATURE_COUNT + 11;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.AxisImpl <em>Axis</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.AxisImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getAxis()
	 * @generated
	 */
	int AXIS = 32;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Kinds</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__KINDS = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Devices</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__DEVICES = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Hidden</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__HIDDEN = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Group By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__GROUP_BY = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Sort By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__SORT_BY = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Axis</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ConditionsImpl <em>Conditions</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ConditionsImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getConditions()
	 * @generated
	 */
	int CONDITIONS = 33;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Direction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__DIRECTION = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__WIRE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Reach</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__REACH = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Inside</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__INSIDE = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Through</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__THROUGH = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Bends</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__BENDS = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>After Inflation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__AFTER_INFLATION = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Conditions</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.OccupantImpl <em>Occupant</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.OccupantImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getOccupant()
	 * @generated
	 */
	int OCCUPANT = 34;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Device</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT__DEVICE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT__WIRE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Tip Ahead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT__TIP_AHEAD = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT__USED = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Occupant</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ThroughExtensionImpl <em>Through Extension</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ThroughExtensionImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getThroughExtension()
	 * @generated
	 */
	int THROUGH_EXTENSION = 35;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int THROUGH_EXTENSION__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Extension</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int THROUGH_EXTENSION__EXTENSION = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Protrusion</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int THROUGH_EXTENSION__PROTRUSION = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Through Extension</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int THROUGH_EXTENSION_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.BendImpl <em>Bend</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.BendImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getBend()
	 * @generated
	 */
	int BEND = 36;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BEND__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Where</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BEND__WHERE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BEND__RADIUS = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Angle Degrees</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BEND__ANGLE_DEGREES = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Bend</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BEND_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.VesselPathImpl <em>Vessel Path</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.VesselPathImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getVesselPath()
	 * @generated
	 */
	int VESSEL_PATH = 37;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__NAME = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Segments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__SEGMENTS = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Vessel Path</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.VesselSegmentImpl <em>Vessel Segment</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.VesselSegmentImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getVesselSegment()
	 * @generated
	 */
	int VESSEL_SEGMENT = 38;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__NAME = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__LENGTH = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__DIAMETER = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Bend Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__BEND_RADIUS = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Bend Angle Degrees</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__BEND_ANGLE_DEGREES = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Vessel Segment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.LesionImpl <em>Lesion</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.LesionImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLesion()
	 * @generated
	 */
	int LESION = 39;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__NAME = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__AT = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__LENGTH = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__DIAMETER = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Reference</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__REFERENCE = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Lesion</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.PaperImpl <em>Paper</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.PaperImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPaper()
	 * @generated
	 */
	int PAPER = 40;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER__SIZE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Orientation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER__ORIENTATION = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Primary Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER__PRIMARY_UNIT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Show Numbers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER__SHOW_NUMBERS = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Paper</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.SourceKind <em>Source Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.SourceKind
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSourceKind()
	 * @generated
	 */
	int SOURCE_KIND = 41;

	/**
	 * The meta object id for the '{@link org.ferrule.model.DeviceKind <em>Device Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.DeviceKind
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceKind()
	 * @generated
	 */
	int DEVICE_KIND = 42;

	/**
	 * The meta object id for the '{@link org.ferrule.model.LumenUse <em>Lumen Use</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.LumenUse
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenUse()
	 * @generated
	 */
	int LUMEN_USE = 43;

	/**
	 * The meta object id for the '{@link org.ferrule.model.LumenOpening <em>Lumen Opening</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.LumenOpening
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenOpening()
	 * @generated
	 */
	int LUMEN_OPENING = 44;

	/**
	 * The meta object id for the '{@link org.ferrule.model.CutterType <em>Cutter Type</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.CutterType
	 * @see org.ferrule.model.impl.ModelPackageImpl#getCutterType()
	 * @generated
	 */
	int CUTTER_TYPE = 45;

	/**
	 * The meta object id for the '{@link org.ferrule.model.TransducerType <em>Transducer Type</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.TransducerType
	 * @see org.ferrule.model.impl.ModelPackageImpl#getTransducerType()
	 * @generated
	 */
	int TRANSDUCER_TYPE = 46;

	/**
	 * The meta object id for the '{@link org.ferrule.model.ClaimType <em>Claim Type</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.ClaimType
	 * @see org.ferrule.model.impl.ModelPackageImpl#getClaimType()
	 * @generated
	 */
	int CLAIM_TYPE = 47;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Phase <em>Phase</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Phase
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPhase()
	 * @generated
	 */
	int PHASE = 48;

	/**
	 * The meta object id for the '{@link org.ferrule.model.BenchOutcome <em>Bench Outcome</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.BenchOutcome
	 * @see org.ferrule.model.impl.ModelPackageImpl#getBenchOutcome()
	 * @generated
	 */
	int BENCH_OUTCOME = 49;

	/**
	 * The meta object id for the '{@link org.ferrule.model.FigureClass <em>Figure Class</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.FigureClass
	 * @see org.ferrule.model.impl.ModelPackageImpl#getFigureClass()
	 * @generated
	 */
	int FIGURE_CLASS = 50;

	/**
	 * The meta object id for the '{@link org.ferrule.model.FlowUse <em>Flow Use</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.FlowUse
	 * @see org.ferrule.model.impl.ModelPackageImpl#getFlowUse()
	 * @generated
	 */
	int FLOW_USE = 51;

	/**
	 * The meta object id for the '{@link org.ferrule.model.AllowancePurpose <em>Allowance Purpose</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.AllowancePurpose
	 * @see org.ferrule.model.impl.ModelPackageImpl#getAllowancePurpose()
	 * @generated
	 */
	int ALLOWANCE_PURPOSE = 52;

	/**
	 * The meta object id for the '{@link org.ferrule.model.RatioUse <em>Ratio Use</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.RatioUse
	 * @see org.ferrule.model.impl.ModelPackageImpl#getRatioUse()
	 * @generated
	 */
	int RATIO_USE = 53;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Grouping <em>Grouping</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Grouping
	 * @see org.ferrule.model.impl.ModelPackageImpl#getGrouping()
	 * @generated
	 */
	int GROUPING = 54;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Sorting <em>Sorting</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Sorting
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSorting()
	 * @generated
	 */
	int SORTING = 55;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Direction <em>Direction</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Direction
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDirection()
	 * @generated
	 */
	int DIRECTION = 56;

	/**
	 * The meta object id for the '{@link org.ferrule.model.BendPlace <em>Bend Place</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.BendPlace
	 * @see org.ferrule.model.impl.ModelPackageImpl#getBendPlace()
	 * @generated
	 */
	int BEND_PLACE = 57;

	/**
	 * The meta object id for the '{@link org.ferrule.model.PaperSize <em>Paper Size</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.PaperSize
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPaperSize()
	 * @generated
	 */
	int PAPER_SIZE = 58;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Orientation <em>Orientation</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Orientation
	 * @see org.ferrule.model.impl.ModelPackageImpl#getOrientation()
	 * @generated
	 */
	int ORIENTATION = 59;

	/**
	 * The meta object id for the '{@link org.ferrule.model.PrimaryUnit <em>Primary Unit</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.PrimaryUnit
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPrimaryUnit()
	 * @generated
	 */
	int PRIMARY_UNIT = 60;

	/**
	 * The meta object id for the '{@link org.ferrule.model.ShownNumbers <em>Shown Numbers</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.ShownNumbers
	 * @see org.ferrule.model.impl.ModelPackageImpl#getShownNumbers()
	 * @generated
	 */
	int SHOWN_NUMBERS = 61;

	/**
	 * The meta object id for the '<em>Dimension</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.quantity.Dimension
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDimension()
	 * @generated
	 */
	int DIMENSION = 62;

	/**
	 * The meta object id for the '<em>Pressure</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.quantity.Pressure
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPressure()
	 * @generated
	 */
	int PRESSURE = 63;

	/**
	 * The meta object id for the '<em>Offset</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.quantity.Offset
	 * @see org.ferrule.model.impl.ModelPackageImpl#getOffset()
	 * @generated
	 */
	int OFFSET = 64;


	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ExtraKey <em>Extra Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Extra Key</em>'.
	 * @see org.ferrule.model.ExtraKey
	 * @generated
	 */
	EClass getExtraKey();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ExtraKey#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Key</em>'.
	 * @see org.ferrule.model.ExtraKey#getKey()
	 * @see #getExtraKey()
	 * @generated
	 */
	EAttribute getExtraKey_Key();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ExtraKey#getJson <em>Json</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Json</em>'.
	 * @see org.ferrule.model.ExtraKey#getJson()
	 * @see #getExtraKey()
	 * @generated
	 */
	EAttribute getExtraKey_Json();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Element <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Element</em>'.
	 * @see org.ferrule.model.Element
	 * @generated
	 */
	EClass getElement();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Element#getExtras <em>Extras</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Extras</em>'.
	 * @see org.ferrule.model.Element#getExtras()
	 * @see #getElement()
	 * @generated
	 */
	EReference getElement_Extras();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Sourced <em>Sourced</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sourced</em>'.
	 * @see org.ferrule.model.Sourced
	 * @generated
	 */
	EClass getSourced();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Sourced#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.ferrule.model.Sourced#getSource()
	 * @see #getSourced()
	 * @generated
	 */
	EAttribute getSourced_Source();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Sourced#getPage <em>Page</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Page</em>'.
	 * @see org.ferrule.model.Sourced#getPage()
	 * @see #getSourced()
	 * @generated
	 */
	EAttribute getSourced_Page();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Sourced#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see org.ferrule.model.Sourced#getNote()
	 * @see #getSourced()
	 * @generated
	 */
	EAttribute getSourced_Note();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Document <em>Document</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Document</em>'.
	 * @see org.ferrule.model.Document
	 * @generated
	 */
	EClass getDocument();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Document#getFormat <em>Format</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format</em>'.
	 * @see org.ferrule.model.Document#getFormat()
	 * @see #getDocument()
	 * @generated
	 */
	EAttribute getDocument_Format();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Document#getVersion <em>Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Version</em>'.
	 * @see org.ferrule.model.Document#getVersion()
	 * @see #getDocument()
	 * @generated
	 */
	EAttribute getDocument_Version();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Document#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.ferrule.model.Document#getTitle()
	 * @see #getDocument()
	 * @generated
	 */
	EAttribute getDocument_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Document#getRevision <em>Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Revision</em>'.
	 * @see org.ferrule.model.Document#getRevision()
	 * @see #getDocument()
	 * @generated
	 */
	EAttribute getDocument_Revision();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Document#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.ferrule.model.Document#getDate()
	 * @see #getDocument()
	 * @generated
	 */
	EAttribute getDocument_Date();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Document#getSources <em>Sources</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sources</em>'.
	 * @see org.ferrule.model.Document#getSources()
	 * @see #getDocument()
	 * @generated
	 */
	EReference getDocument_Sources();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Source <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Source</em>'.
	 * @see org.ferrule.model.Source
	 * @generated
	 */
	EClass getSource();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.Source#getId()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.ferrule.model.Source#getTitle()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.ferrule.model.Source#getKind()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getRevision <em>Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Revision</em>'.
	 * @see org.ferrule.model.Source#getRevision()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Revision();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.ferrule.model.Source#getDate()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Date();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getReviewer <em>Reviewer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reviewer</em>'.
	 * @see org.ferrule.model.Source#getReviewer()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Reviewer();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getReviewed <em>Reviewed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reviewed</em>'.
	 * @see org.ferrule.model.Source#getReviewed()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Reviewed();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.DeviceLibrary <em>Device Library</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Device Library</em>'.
	 * @see org.ferrule.model.DeviceLibrary
	 * @generated
	 */
	EClass getDeviceLibrary();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceLibrary#getLines <em>Lines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lines</em>'.
	 * @see org.ferrule.model.DeviceLibrary#getLines()
	 * @see #getDeviceLibrary()
	 * @generated
	 */
	EReference getDeviceLibrary_Lines();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceLibrary#getDevices <em>Devices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Devices</em>'.
	 * @see org.ferrule.model.DeviceLibrary#getDevices()
	 * @see #getDeviceLibrary()
	 * @generated
	 */
	EReference getDeviceLibrary_Devices();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceLibrary#getBench <em>Bench</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bench</em>'.
	 * @see org.ferrule.model.DeviceLibrary#getBench()
	 * @see #getDeviceLibrary()
	 * @generated
	 */
	EReference getDeviceLibrary_Bench();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.DeviceParts <em>Device Parts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Device Parts</em>'.
	 * @see org.ferrule.model.DeviceParts
	 * @generated
	 */
	EClass getDeviceParts();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.DeviceParts#getId()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.DeviceParts#getName()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.ferrule.model.DeviceParts#getKind()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getMaker <em>Maker</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maker</em>'.
	 * @see org.ferrule.model.DeviceParts#getMaker()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Maker();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getModel <em>Model</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Model</em>'.
	 * @see org.ferrule.model.DeviceParts#getModel()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Model();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getSize <em>Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Size</em>'.
	 * @see org.ferrule.model.DeviceParts#getSize()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Size();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getEffectiveLength <em>Effective Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Effective Length</em>'.
	 * @see org.ferrule.model.DeviceParts#getEffectiveLength()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_EffectiveLength();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getTakesWire <em>Takes Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Takes Wire</em>'.
	 * @see org.ferrule.model.DeviceParts#getTakesWire()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_TakesWire();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceParts#getSections <em>Sections</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sections</em>'.
	 * @see org.ferrule.model.DeviceParts#getSections()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Sections();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceParts#getLumens <em>Lumens</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lumens</em>'.
	 * @see org.ferrule.model.DeviceParts#getLumens()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Lumens();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceParts#getMarkers <em>Markers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Markers</em>'.
	 * @see org.ferrule.model.DeviceParts#getMarkers()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Markers();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.DeviceParts#getBalloon <em>Balloon</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Balloon</em>'.
	 * @see org.ferrule.model.DeviceParts#getBalloon()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Balloon();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.DeviceParts#getStent <em>Stent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Stent</em>'.
	 * @see org.ferrule.model.DeviceParts#getStent()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Stent();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.DeviceParts#getCutter <em>Cutter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Cutter</em>'.
	 * @see org.ferrule.model.DeviceParts#getCutter()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Cutter();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.DeviceParts#getTransducer <em>Transducer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Transducer</em>'.
	 * @see org.ferrule.model.DeviceParts#getTransducer()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Transducer();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.DeviceParts#getWire <em>Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Wire</em>'.
	 * @see org.ferrule.model.DeviceParts#getWire()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Wire();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceParts#getClaims <em>Claims</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Claims</em>'.
	 * @see org.ferrule.model.DeviceParts#getClaims()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Claims();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.DeviceLine <em>Device Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Device Line</em>'.
	 * @see org.ferrule.model.DeviceLine
	 * @generated
	 */
	EClass getDeviceLine();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Device <em>Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Device</em>'.
	 * @see org.ferrule.model.Device
	 * @generated
	 */
	EClass getDevice();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Device#getLine <em>Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Line</em>'.
	 * @see org.ferrule.model.Device#getLine()
	 * @see #getDevice()
	 * @generated
	 */
	EAttribute getDevice_Line();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ShaftSection <em>Shaft Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Shaft Section</em>'.
	 * @see org.ferrule.model.ShaftSection
	 * @generated
	 */
	EClass getShaftSection();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.ShaftSection#getName()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.ferrule.model.ShaftSection#getFrom()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_From();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.ferrule.model.ShaftSection#getTo()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_To();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getOd <em>Od</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Od</em>'.
	 * @see org.ferrule.model.ShaftSection#getOd()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_Od();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getOdProximal <em>Od Proximal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Od Proximal</em>'.
	 * @see org.ferrule.model.ShaftSection#getOdProximal()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_OdProximal();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getOdAfter <em>Od After</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Od After</em>'.
	 * @see org.ferrule.model.ShaftSection#getOdAfter()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_OdAfter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getOdAfterProximal <em>Od After Proximal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Od After Proximal</em>'.
	 * @see org.ferrule.model.ShaftSection#getOdAfterProximal()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_OdAfterProximal();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.ShaftSection#getOval <em>Oval</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Oval</em>'.
	 * @see org.ferrule.model.ShaftSection#getOval()
	 * @see #getShaftSection()
	 * @generated
	 */
	EReference getShaftSection_Oval();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.ShaftSection#getDiscs <em>Discs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Discs</em>'.
	 * @see org.ferrule.model.ShaftSection#getDiscs()
	 * @see #getShaftSection()
	 * @generated
	 */
	EReference getShaftSection_Discs();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#isRigid <em>Rigid</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rigid</em>'.
	 * @see org.ferrule.model.ShaftSection#isRigid()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_Rigid();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getStiffness <em>Stiffness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stiffness</em>'.
	 * @see org.ferrule.model.ShaftSection#getStiffness()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_Stiffness();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Oval <em>Oval</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Oval</em>'.
	 * @see org.ferrule.model.Oval
	 * @generated
	 */
	EClass getOval();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Oval#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.ferrule.model.Oval#getWidth()
	 * @see #getOval()
	 * @generated
	 */
	EAttribute getOval_Width();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Oval#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.ferrule.model.Oval#getHeight()
	 * @see #getOval()
	 * @generated
	 */
	EAttribute getOval_Height();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Disc <em>Disc</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Disc</em>'.
	 * @see org.ferrule.model.Disc
	 * @generated
	 */
	EClass getDisc();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Disc#getX <em>X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>X</em>'.
	 * @see org.ferrule.model.Disc#getX()
	 * @see #getDisc()
	 * @generated
	 */
	EAttribute getDisc_X();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Disc#getY <em>Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Y</em>'.
	 * @see org.ferrule.model.Disc#getY()
	 * @see #getDisc()
	 * @generated
	 */
	EAttribute getDisc_Y();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Disc#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.Disc#getDiameter()
	 * @see #getDisc()
	 * @generated
	 */
	EAttribute getDisc_Diameter();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Lumen <em>Lumen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lumen</em>'.
	 * @see org.ferrule.model.Lumen
	 * @generated
	 */
	EClass getLumen();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lumen#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.Lumen#getName()
	 * @see #getLumen()
	 * @generated
	 */
	EAttribute getLumen_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lumen#getUse <em>Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Use</em>'.
	 * @see org.ferrule.model.Lumen#getUse()
	 * @see #getLumen()
	 * @generated
	 */
	EAttribute getLumen_Use();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lumen#getDistalAt <em>Distal At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Distal At</em>'.
	 * @see org.ferrule.model.Lumen#getDistalAt()
	 * @see #getLumen()
	 * @generated
	 */
	EAttribute getLumen_DistalAt();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lumen#getProximalAt <em>Proximal At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Proximal At</em>'.
	 * @see org.ferrule.model.Lumen#getProximalAt()
	 * @see #getLumen()
	 * @generated
	 */
	EAttribute getLumen_ProximalAt();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lumen#getOpens <em>Opens</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Opens</em>'.
	 * @see org.ferrule.model.Lumen#getOpens()
	 * @see #getLumen()
	 * @generated
	 */
	EAttribute getLumen_Opens();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Lumen#getSections <em>Sections</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sections</em>'.
	 * @see org.ferrule.model.Lumen#getSections()
	 * @see #getLumen()
	 * @generated
	 */
	EReference getLumen_Sections();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.LumenSection <em>Lumen Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lumen Section</em>'.
	 * @see org.ferrule.model.LumenSection
	 * @generated
	 */
	EClass getLumenSection();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LumenSection#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.LumenSection#getName()
	 * @see #getLumenSection()
	 * @generated
	 */
	EAttribute getLumenSection_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LumenSection#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.ferrule.model.LumenSection#getFrom()
	 * @see #getLumenSection()
	 * @generated
	 */
	EAttribute getLumenSection_From();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LumenSection#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.ferrule.model.LumenSection#getTo()
	 * @see #getLumenSection()
	 * @generated
	 */
	EAttribute getLumenSection_To();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LumenSection#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.LumenSection#getId()
	 * @see #getLumenSection()
	 * @generated
	 */
	EAttribute getLumenSection_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LumenSection#getIdDistal <em>Id Distal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id Distal</em>'.
	 * @see org.ferrule.model.LumenSection#getIdDistal()
	 * @see #getLumenSection()
	 * @generated
	 */
	EAttribute getLumenSection_IdDistal();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Marker <em>Marker</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Marker</em>'.
	 * @see org.ferrule.model.Marker
	 * @generated
	 */
	EClass getMarker();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Marker#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.ferrule.model.Marker#getAt()
	 * @see #getMarker()
	 * @generated
	 */
	EAttribute getMarker_At();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Marker#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.ferrule.model.Marker#getWidth()
	 * @see #getMarker()
	 * @generated
	 */
	EAttribute getMarker_Width();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Balloon <em>Balloon</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Balloon</em>'.
	 * @see org.ferrule.model.Balloon
	 * @generated
	 */
	EClass getBalloon();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Balloon#getSection <em>Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Section</em>'.
	 * @see org.ferrule.model.Balloon#getSection()
	 * @see #getBalloon()
	 * @generated
	 */
	EAttribute getBalloon_Section();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Balloon#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.Balloon#getDiameter()
	 * @see #getBalloon()
	 * @generated
	 */
	EAttribute getBalloon_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Balloon#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.ferrule.model.Balloon#getLength()
	 * @see #getBalloon()
	 * @generated
	 */
	EAttribute getBalloon_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Balloon#getNominalPressure <em>Nominal Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Nominal Pressure</em>'.
	 * @see org.ferrule.model.Balloon#getNominalPressure()
	 * @see #getBalloon()
	 * @generated
	 */
	EAttribute getBalloon_NominalPressure();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Balloon#getRatedBurstPressure <em>Rated Burst Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Burst Pressure</em>'.
	 * @see org.ferrule.model.Balloon#getRatedBurstPressure()
	 * @see #getBalloon()
	 * @generated
	 */
	EAttribute getBalloon_RatedBurstPressure();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Balloon#getCompliance <em>Compliance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Compliance</em>'.
	 * @see org.ferrule.model.Balloon#getCompliance()
	 * @see #getBalloon()
	 * @generated
	 */
	EReference getBalloon_Compliance();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ComplianceRow <em>Compliance Row</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Compliance Row</em>'.
	 * @see org.ferrule.model.ComplianceRow
	 * @generated
	 */
	EClass getComplianceRow();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ComplianceRow#getPressure <em>Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pressure</em>'.
	 * @see org.ferrule.model.ComplianceRow#getPressure()
	 * @see #getComplianceRow()
	 * @generated
	 */
	EAttribute getComplianceRow_Pressure();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ComplianceRow#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.ComplianceRow#getDiameter()
	 * @see #getComplianceRow()
	 * @generated
	 */
	EAttribute getComplianceRow_Diameter();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Stent <em>Stent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stent</em>'.
	 * @see org.ferrule.model.Stent
	 * @generated
	 */
	EClass getStent();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getSection <em>Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Section</em>'.
	 * @see org.ferrule.model.Stent#getSection()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_Section();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.Stent#getDiameter()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.ferrule.model.Stent#getLength()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getMaximumDiameter <em>Maximum Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Diameter</em>'.
	 * @see org.ferrule.model.Stent#getMaximumDiameter()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_MaximumDiameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see org.ferrule.model.Stent#getMaterial()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_Material();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getStrutThickness <em>Strut Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strut Thickness</em>'.
	 * @see org.ferrule.model.Stent#getStrutThickness()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_StrutThickness();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Cutter <em>Cutter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cutter</em>'.
	 * @see org.ferrule.model.Cutter
	 * @generated
	 */
	EClass getCutter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Cutter#getSection <em>Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Section</em>'.
	 * @see org.ferrule.model.Cutter#getSection()
	 * @see #getCutter()
	 * @generated
	 */
	EAttribute getCutter_Section();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Cutter#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see org.ferrule.model.Cutter#getType()
	 * @see #getCutter()
	 * @generated
	 */
	EAttribute getCutter_Type();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Cutter#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.Cutter#getDiameter()
	 * @see #getCutter()
	 * @generated
	 */
	EAttribute getCutter_Diameter();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Transducer <em>Transducer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Transducer</em>'.
	 * @see org.ferrule.model.Transducer
	 * @generated
	 */
	EClass getTransducer();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Transducer#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see org.ferrule.model.Transducer#getType()
	 * @see #getTransducer()
	 * @generated
	 */
	EAttribute getTransducer_Type();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Transducer#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.ferrule.model.Transducer#getAt()
	 * @see #getTransducer()
	 * @generated
	 */
	EAttribute getTransducer_At();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.WireTraits <em>Wire Traits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Wire Traits</em>'.
	 * @see org.ferrule.model.WireTraits
	 * @generated
	 */
	EClass getWireTraits();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.WireTraits#getTipLoad <em>Tip Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tip Load</em>'.
	 * @see org.ferrule.model.WireTraits#getTipLoad()
	 * @see #getWireTraits()
	 * @generated
	 */
	EAttribute getWireTraits_TipLoad();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.WireTraits#getTipShape <em>Tip Shape</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tip Shape</em>'.
	 * @see org.ferrule.model.WireTraits#getTipShape()
	 * @see #getWireTraits()
	 * @generated
	 */
	EAttribute getWireTraits_TipShape();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.WireTraits#isExtendable <em>Extendable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Extendable</em>'.
	 * @see org.ferrule.model.WireTraits#isExtendable()
	 * @see #getWireTraits()
	 * @generated
	 */
	EAttribute getWireTraits_Extendable();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.WireTraits#getCoating <em>Coating</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coating</em>'.
	 * @see org.ferrule.model.WireTraits#getCoating()
	 * @see #getWireTraits()
	 * @generated
	 */
	EAttribute getWireTraits_Coating();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Claim <em>Claim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Claim</em>'.
	 * @see org.ferrule.model.Claim
	 * @generated
	 */
	EClass getClaim();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Claim#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see org.ferrule.model.Claim#getType()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Type();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Claim#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see org.ferrule.model.Claim#getValue()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Value();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Claim#getKinds <em>Kinds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Kinds</em>'.
	 * @see org.ferrule.model.Claim#getKinds()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Kinds();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Claim#getSizes <em>Sizes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Sizes</em>'.
	 * @see org.ferrule.model.Claim#getSizes()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Sizes();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Claim#getDevices <em>Devices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Devices</em>'.
	 * @see org.ferrule.model.Claim#getDevices()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Devices();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Claim#getWire <em>Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wire</em>'.
	 * @see org.ferrule.model.Claim#getWire()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Wire();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Claim#isAlone <em>Alone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Alone</em>'.
	 * @see org.ferrule.model.Claim#isAlone()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Alone();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Claim#getCovers <em>Covers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Covers</em>'.
	 * @see org.ferrule.model.Claim#getCovers()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Covers();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.BenchResult <em>Bench Result</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bench Result</em>'.
	 * @see org.ferrule.model.BenchResult
	 * @generated
	 */
	EClass getBenchResult();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getOuter <em>Outer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outer</em>'.
	 * @see org.ferrule.model.BenchResult#getOuter()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Outer();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getLumen <em>Lumen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lumen</em>'.
	 * @see org.ferrule.model.BenchResult#getLumen()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Lumen();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getInner <em>Inner</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inner</em>'.
	 * @see org.ferrule.model.BenchResult#getInner()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Inner();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getWire <em>Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wire</em>'.
	 * @see org.ferrule.model.BenchResult#getWire()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Wire();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getResult <em>Result</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Result</em>'.
	 * @see org.ferrule.model.BenchResult#getResult()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Result();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.BenchResult#getCovers <em>Covers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Covers</em>'.
	 * @see org.ferrule.model.BenchResult#getCovers()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Covers();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getSamples <em>Samples</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Samples</em>'.
	 * @see org.ferrule.model.BenchResult#getSamples()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Samples();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.RuleSet <em>Rule Set</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Rule Set</em>'.
	 * @see org.ferrule.model.RuleSet
	 * @generated
	 */
	EClass getRuleSet();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getSpans <em>Spans</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Spans</em>'.
	 * @see org.ferrule.model.RuleSet#getSpans()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_Spans();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getClearances <em>Clearances</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Clearances</em>'.
	 * @see org.ferrule.model.RuleSet#getClearances()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_Clearances();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getAfterUse <em>After Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>After Use</em>'.
	 * @see org.ferrule.model.RuleSet#getAfterUse()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_AfterUse();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getFlowLimits <em>Flow Limits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Flow Limits</em>'.
	 * @see org.ferrule.model.RuleSet#getFlowLimits()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_FlowLimits();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getAllowances <em>Allowances</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Allowances</em>'.
	 * @see org.ferrule.model.RuleSet#getAllowances()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_Allowances();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getRatioBands <em>Ratio Bands</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Ratio Bands</em>'.
	 * @see org.ferrule.model.RuleSet#getRatioBands()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_RatioBands();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getChanceLimits <em>Chance Limits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Chance Limits</em>'.
	 * @see org.ferrule.model.RuleSet#getChanceLimits()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_ChanceLimits();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RuleSet#getConfidence <em>Confidence</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Confidence</em>'.
	 * @see org.ferrule.model.RuleSet#getConfidence()
	 * @see #getRuleSet()
	 * @generated
	 */
	EAttribute getRuleSet_Confidence();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RuleSet#getCoverage <em>Coverage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coverage</em>'.
	 * @see org.ferrule.model.RuleSet#getCoverage()
	 * @see #getRuleSet()
	 * @generated
	 */
	EAttribute getRuleSet_Coverage();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RuleSet#getWireAhead <em>Wire Ahead</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wire Ahead</em>'.
	 * @see org.ferrule.model.RuleSet#getWireAhead()
	 * @see #getRuleSet()
	 * @generated
	 */
	EAttribute getRuleSet_WireAhead();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Span <em>Span</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Span</em>'.
	 * @see org.ferrule.model.Span
	 * @generated
	 */
	EClass getSpan();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Span#getFigure <em>Figure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Figure</em>'.
	 * @see org.ferrule.model.Span#getFigure()
	 * @see #getSpan()
	 * @generated
	 */
	EAttribute getSpan_Figure();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Span#getKinds <em>Kinds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Kinds</em>'.
	 * @see org.ferrule.model.Span#getKinds()
	 * @see #getSpan()
	 * @generated
	 */
	EAttribute getSpan_Kinds();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Span#getBelow <em>Below</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Below</em>'.
	 * @see org.ferrule.model.Span#getBelow()
	 * @see #getSpan()
	 * @generated
	 */
	EAttribute getSpan_Below();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Span#getAbove <em>Above</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Above</em>'.
	 * @see org.ferrule.model.Span#getAbove()
	 * @see #getSpan()
	 * @generated
	 */
	EAttribute getSpan_Above();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Span#isRunsLow <em>Runs Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Runs Low</em>'.
	 * @see org.ferrule.model.Span#isRunsLow()
	 * @see #getSpan()
	 * @generated
	 */
	EAttribute getSpan_RunsLow();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ClearanceRule <em>Clearance Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Clearance Rule</em>'.
	 * @see org.ferrule.model.ClearanceRule
	 * @generated
	 */
	EClass getClearanceRule();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.ClearanceRule#getOuter <em>Outer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Outer</em>'.
	 * @see org.ferrule.model.ClearanceRule#getOuter()
	 * @see #getClearanceRule()
	 * @generated
	 */
	EAttribute getClearanceRule_Outer();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.ClearanceRule#getInner <em>Inner</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Inner</em>'.
	 * @see org.ferrule.model.ClearanceRule#getInner()
	 * @see #getClearanceRule()
	 * @generated
	 */
	EAttribute getClearanceRule_Inner();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ClearanceRule#getRequired <em>Required</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Required</em>'.
	 * @see org.ferrule.model.ClearanceRule#getRequired()
	 * @see #getClearanceRule()
	 * @generated
	 */
	EAttribute getClearanceRule_Required();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.AfterUseRule <em>After Use Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>After Use Rule</em>'.
	 * @see org.ferrule.model.AfterUseRule
	 * @generated
	 */
	EClass getAfterUseRule();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.AfterUseRule#getKinds <em>Kinds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Kinds</em>'.
	 * @see org.ferrule.model.AfterUseRule#getKinds()
	 * @see #getAfterUseRule()
	 * @generated
	 */
	EAttribute getAfterUseRule_Kinds();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.AfterUseRule#getGrowthLow <em>Growth Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Growth Low</em>'.
	 * @see org.ferrule.model.AfterUseRule#getGrowthLow()
	 * @see #getAfterUseRule()
	 * @generated
	 */
	EAttribute getAfterUseRule_GrowthLow();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.AfterUseRule#getGrowthCentre <em>Growth Centre</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Growth Centre</em>'.
	 * @see org.ferrule.model.AfterUseRule#getGrowthCentre()
	 * @see #getAfterUseRule()
	 * @generated
	 */
	EAttribute getAfterUseRule_GrowthCentre();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.AfterUseRule#getGrowthHigh <em>Growth High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Growth High</em>'.
	 * @see org.ferrule.model.AfterUseRule#getGrowthHigh()
	 * @see #getAfterUseRule()
	 * @generated
	 */
	EAttribute getAfterUseRule_GrowthHigh();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.FlowLimit <em>Flow Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Flow Limit</em>'.
	 * @see org.ferrule.model.FlowLimit
	 * @generated
	 */
	EClass getFlowLimit();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.FlowLimit#getUse <em>Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Use</em>'.
	 * @see org.ferrule.model.FlowLimit#getUse()
	 * @see #getFlowLimit()
	 * @generated
	 */
	EAttribute getFlowLimit_Use();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.FlowLimit#getLeast <em>Least</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Least</em>'.
	 * @see org.ferrule.model.FlowLimit#getLeast()
	 * @see #getFlowLimit()
	 * @generated
	 */
	EAttribute getFlowLimit_Least();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Allowance <em>Allowance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Allowance</em>'.
	 * @see org.ferrule.model.Allowance
	 * @generated
	 */
	EClass getAllowance();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Allowance#getPurpose <em>Purpose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Purpose</em>'.
	 * @see org.ferrule.model.Allowance#getPurpose()
	 * @see #getAllowance()
	 * @generated
	 */
	EAttribute getAllowance_Purpose();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Allowance#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.ferrule.model.Allowance#getLength()
	 * @see #getAllowance()
	 * @generated
	 */
	EAttribute getAllowance_Length();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.RatioBand <em>Ratio Band</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Ratio Band</em>'.
	 * @see org.ferrule.model.RatioBand
	 * @generated
	 */
	EClass getRatioBand();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RatioBand#getUse <em>Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Use</em>'.
	 * @see org.ferrule.model.RatioBand#getUse()
	 * @see #getRatioBand()
	 * @generated
	 */
	EAttribute getRatioBand_Use();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RatioBand#getLow <em>Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Low</em>'.
	 * @see org.ferrule.model.RatioBand#getLow()
	 * @see #getRatioBand()
	 * @generated
	 */
	EAttribute getRatioBand_Low();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RatioBand#getHigh <em>High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High</em>'.
	 * @see org.ferrule.model.RatioBand#getHigh()
	 * @see #getRatioBand()
	 * @generated
	 */
	EAttribute getRatioBand_High();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RatioBand#getMeaning <em>Meaning</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Meaning</em>'.
	 * @see org.ferrule.model.RatioBand#getMeaning()
	 * @see #getRatioBand()
	 * @generated
	 */
	EAttribute getRatioBand_Meaning();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ChanceLimit <em>Chance Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Chance Limit</em>'.
	 * @see org.ferrule.model.ChanceLimit
	 * @generated
	 */
	EClass getChanceLimit();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ChanceLimit#getGreatest <em>Greatest</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Greatest</em>'.
	 * @see org.ferrule.model.ChanceLimit#getGreatest()
	 * @see #getChanceLimit()
	 * @generated
	 */
	EAttribute getChanceLimit_Greatest();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.FitChart <em>Fit Chart</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Fit Chart</em>'.
	 * @see org.ferrule.model.FitChart
	 * @generated
	 */
	EClass getFitChart();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.FitChart#getAudience <em>Audience</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Audience</em>'.
	 * @see org.ferrule.model.FitChart#getAudience()
	 * @see #getFitChart()
	 * @generated
	 */
	EAttribute getFitChart_Audience();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.FitChart#getAuthor <em>Author</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Author</em>'.
	 * @see org.ferrule.model.FitChart#getAuthor()
	 * @see #getFitChart()
	 * @generated
	 */
	EAttribute getFitChart_Author();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.FitChart#getLibraries <em>Libraries</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Libraries</em>'.
	 * @see org.ferrule.model.FitChart#getLibraries()
	 * @see #getFitChart()
	 * @generated
	 */
	EAttribute getFitChart_Libraries();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.FitChart#getRules <em>Rules</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rules</em>'.
	 * @see org.ferrule.model.FitChart#getRules()
	 * @see #getFitChart()
	 * @generated
	 */
	EAttribute getFitChart_Rules();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getOuter <em>Outer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Outer</em>'.
	 * @see org.ferrule.model.FitChart#getOuter()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Outer();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getInner <em>Inner</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Inner</em>'.
	 * @see org.ferrule.model.FitChart#getInner()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Inner();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getConditions <em>Conditions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Conditions</em>'.
	 * @see org.ferrule.model.FitChart#getConditions()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Conditions();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getPath <em>Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Path</em>'.
	 * @see org.ferrule.model.FitChart#getPath()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Path();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getLesion <em>Lesion</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Lesion</em>'.
	 * @see org.ferrule.model.FitChart#getLesion()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Lesion();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getPaper <em>Paper</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Paper</em>'.
	 * @see org.ferrule.model.FitChart#getPaper()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Paper();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.FitChart#getFootnotes <em>Footnotes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Footnotes</em>'.
	 * @see org.ferrule.model.FitChart#getFootnotes()
	 * @see #getFitChart()
	 * @generated
	 */
	EAttribute getFitChart_Footnotes();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Axis <em>Axis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Axis</em>'.
	 * @see org.ferrule.model.Axis
	 * @generated
	 */
	EClass getAxis();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Axis#getKinds <em>Kinds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Kinds</em>'.
	 * @see org.ferrule.model.Axis#getKinds()
	 * @see #getAxis()
	 * @generated
	 */
	EAttribute getAxis_Kinds();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Axis#getDevices <em>Devices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Devices</em>'.
	 * @see org.ferrule.model.Axis#getDevices()
	 * @see #getAxis()
	 * @generated
	 */
	EAttribute getAxis_Devices();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Axis#getHidden <em>Hidden</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Hidden</em>'.
	 * @see org.ferrule.model.Axis#getHidden()
	 * @see #getAxis()
	 * @generated
	 */
	EAttribute getAxis_Hidden();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Axis#getGroupBy <em>Group By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Group By</em>'.
	 * @see org.ferrule.model.Axis#getGroupBy()
	 * @see #getAxis()
	 * @generated
	 */
	EAttribute getAxis_GroupBy();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Axis#getSortBy <em>Sort By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sort By</em>'.
	 * @see org.ferrule.model.Axis#getSortBy()
	 * @see #getAxis()
	 * @generated
	 */
	EAttribute getAxis_SortBy();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Conditions <em>Conditions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Conditions</em>'.
	 * @see org.ferrule.model.Conditions
	 * @generated
	 */
	EClass getConditions();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Conditions#getDirection <em>Direction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Direction</em>'.
	 * @see org.ferrule.model.Conditions#getDirection()
	 * @see #getConditions()
	 * @generated
	 */
	EAttribute getConditions_Direction();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Conditions#getWire <em>Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wire</em>'.
	 * @see org.ferrule.model.Conditions#getWire()
	 * @see #getConditions()
	 * @generated
	 */
	EAttribute getConditions_Wire();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Conditions#getReach <em>Reach</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reach</em>'.
	 * @see org.ferrule.model.Conditions#getReach()
	 * @see #getConditions()
	 * @generated
	 */
	EAttribute getConditions_Reach();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Conditions#getInside <em>Inside</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Inside</em>'.
	 * @see org.ferrule.model.Conditions#getInside()
	 * @see #getConditions()
	 * @generated
	 */
	EReference getConditions_Inside();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.Conditions#getThrough <em>Through</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Through</em>'.
	 * @see org.ferrule.model.Conditions#getThrough()
	 * @see #getConditions()
	 * @generated
	 */
	EReference getConditions_Through();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Conditions#getBends <em>Bends</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bends</em>'.
	 * @see org.ferrule.model.Conditions#getBends()
	 * @see #getConditions()
	 * @generated
	 */
	EReference getConditions_Bends();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Conditions#isAfterInflation <em>After Inflation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>After Inflation</em>'.
	 * @see org.ferrule.model.Conditions#isAfterInflation()
	 * @see #getConditions()
	 * @generated
	 */
	EAttribute getConditions_AfterInflation();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Occupant <em>Occupant</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Occupant</em>'.
	 * @see org.ferrule.model.Occupant
	 * @generated
	 */
	EClass getOccupant();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Occupant#getDevice <em>Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Device</em>'.
	 * @see org.ferrule.model.Occupant#getDevice()
	 * @see #getOccupant()
	 * @generated
	 */
	EAttribute getOccupant_Device();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Occupant#getWire <em>Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wire</em>'.
	 * @see org.ferrule.model.Occupant#getWire()
	 * @see #getOccupant()
	 * @generated
	 */
	EAttribute getOccupant_Wire();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Occupant#getTipAhead <em>Tip Ahead</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tip Ahead</em>'.
	 * @see org.ferrule.model.Occupant#getTipAhead()
	 * @see #getOccupant()
	 * @generated
	 */
	EAttribute getOccupant_TipAhead();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Occupant#isUsed <em>Used</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Used</em>'.
	 * @see org.ferrule.model.Occupant#isUsed()
	 * @see #getOccupant()
	 * @generated
	 */
	EAttribute getOccupant_Used();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ThroughExtension <em>Through Extension</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Through Extension</em>'.
	 * @see org.ferrule.model.ThroughExtension
	 * @generated
	 */
	EClass getThroughExtension();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ThroughExtension#getExtension <em>Extension</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Extension</em>'.
	 * @see org.ferrule.model.ThroughExtension#getExtension()
	 * @see #getThroughExtension()
	 * @generated
	 */
	EAttribute getThroughExtension_Extension();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ThroughExtension#getProtrusion <em>Protrusion</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protrusion</em>'.
	 * @see org.ferrule.model.ThroughExtension#getProtrusion()
	 * @see #getThroughExtension()
	 * @generated
	 */
	EAttribute getThroughExtension_Protrusion();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Bend <em>Bend</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bend</em>'.
	 * @see org.ferrule.model.Bend
	 * @generated
	 */
	EClass getBend();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Bend#getWhere <em>Where</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Where</em>'.
	 * @see org.ferrule.model.Bend#getWhere()
	 * @see #getBend()
	 * @generated
	 */
	EAttribute getBend_Where();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Bend#getRadius <em>Radius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Radius</em>'.
	 * @see org.ferrule.model.Bend#getRadius()
	 * @see #getBend()
	 * @generated
	 */
	EAttribute getBend_Radius();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Bend#getAngleDegrees <em>Angle Degrees</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Angle Degrees</em>'.
	 * @see org.ferrule.model.Bend#getAngleDegrees()
	 * @see #getBend()
	 * @generated
	 */
	EAttribute getBend_AngleDegrees();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.VesselPath <em>Vessel Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Vessel Path</em>'.
	 * @see org.ferrule.model.VesselPath
	 * @generated
	 */
	EClass getVesselPath();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselPath#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.VesselPath#getName()
	 * @see #getVesselPath()
	 * @generated
	 */
	EAttribute getVesselPath_Name();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.VesselPath#getSegments <em>Segments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Segments</em>'.
	 * @see org.ferrule.model.VesselPath#getSegments()
	 * @see #getVesselPath()
	 * @generated
	 */
	EReference getVesselPath_Segments();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.VesselSegment <em>Vessel Segment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Vessel Segment</em>'.
	 * @see org.ferrule.model.VesselSegment
	 * @generated
	 */
	EClass getVesselSegment();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselSegment#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.VesselSegment#getName()
	 * @see #getVesselSegment()
	 * @generated
	 */
	EAttribute getVesselSegment_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselSegment#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.ferrule.model.VesselSegment#getLength()
	 * @see #getVesselSegment()
	 * @generated
	 */
	EAttribute getVesselSegment_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselSegment#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.VesselSegment#getDiameter()
	 * @see #getVesselSegment()
	 * @generated
	 */
	EAttribute getVesselSegment_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselSegment#getBendRadius <em>Bend Radius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bend Radius</em>'.
	 * @see org.ferrule.model.VesselSegment#getBendRadius()
	 * @see #getVesselSegment()
	 * @generated
	 */
	EAttribute getVesselSegment_BendRadius();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselSegment#getBendAngleDegrees <em>Bend Angle Degrees</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bend Angle Degrees</em>'.
	 * @see org.ferrule.model.VesselSegment#getBendAngleDegrees()
	 * @see #getVesselSegment()
	 * @generated
	 */
	EAttribute getVesselSegment_BendAngleDegrees();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Lesion <em>Lesion</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lesion</em>'.
	 * @see org.ferrule.model.Lesion
	 * @generated
	 */
	EClass getLesion();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lesion#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.Lesion#getName()
	 * @see #getLesion()
	 * @generated
	 */
	EAttribute getLesion_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lesion#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.ferrule.model.Lesion#getAt()
	 * @see #getLesion()
	 * @generated
	 */
	EAttribute getLesion_At();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lesion#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.ferrule.model.Lesion#getLength()
	 * @see #getLesion()
	 * @generated
	 */
	EAttribute getLesion_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lesion#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.Lesion#getDiameter()
	 * @see #getLesion()
	 * @generated
	 */
	EAttribute getLesion_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lesion#getReference <em>Reference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reference</em>'.
	 * @see org.ferrule.model.Lesion#getReference()
	 * @see #getLesion()
	 * @generated
	 */
	EAttribute getLesion_Reference();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Paper <em>Paper</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Paper</em>'.
	 * @see org.ferrule.model.Paper
	 * @generated
	 */
	EClass getPaper();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Paper#getSize <em>Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Size</em>'.
	 * @see org.ferrule.model.Paper#getSize()
	 * @see #getPaper()
	 * @generated
	 */
	EAttribute getPaper_Size();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Paper#getOrientation <em>Orientation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Orientation</em>'.
	 * @see org.ferrule.model.Paper#getOrientation()
	 * @see #getPaper()
	 * @generated
	 */
	EAttribute getPaper_Orientation();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Paper#getPrimaryUnit <em>Primary Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Primary Unit</em>'.
	 * @see org.ferrule.model.Paper#getPrimaryUnit()
	 * @see #getPaper()
	 * @generated
	 */
	EAttribute getPaper_PrimaryUnit();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Paper#getShowNumbers <em>Show Numbers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Show Numbers</em>'.
	 * @see org.ferrule.model.Paper#getShowNumbers()
	 * @see #getPaper()
	 * @generated
	 */
	EAttribute getPaper_ShowNumbers();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.SourceKind <em>Source Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Source Kind</em>'.
	 * @see org.ferrule.model.SourceKind
	 * @generated
	 */
	EEnum getSourceKind();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.DeviceKind <em>Device Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Device Kind</em>'.
	 * @see org.ferrule.model.DeviceKind
	 * @generated
	 */
	EEnum getDeviceKind();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.LumenUse <em>Lumen Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Lumen Use</em>'.
	 * @see org.ferrule.model.LumenUse
	 * @generated
	 */
	EEnum getLumenUse();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.LumenOpening <em>Lumen Opening</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Lumen Opening</em>'.
	 * @see org.ferrule.model.LumenOpening
	 * @generated
	 */
	EEnum getLumenOpening();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.CutterType <em>Cutter Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Cutter Type</em>'.
	 * @see org.ferrule.model.CutterType
	 * @generated
	 */
	EEnum getCutterType();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.TransducerType <em>Transducer Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Transducer Type</em>'.
	 * @see org.ferrule.model.TransducerType
	 * @generated
	 */
	EEnum getTransducerType();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.ClaimType <em>Claim Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Claim Type</em>'.
	 * @see org.ferrule.model.ClaimType
	 * @generated
	 */
	EEnum getClaimType();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Phase <em>Phase</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Phase</em>'.
	 * @see org.ferrule.model.Phase
	 * @generated
	 */
	EEnum getPhase();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.BenchOutcome <em>Bench Outcome</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Bench Outcome</em>'.
	 * @see org.ferrule.model.BenchOutcome
	 * @generated
	 */
	EEnum getBenchOutcome();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.FigureClass <em>Figure Class</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Figure Class</em>'.
	 * @see org.ferrule.model.FigureClass
	 * @generated
	 */
	EEnum getFigureClass();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.FlowUse <em>Flow Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Flow Use</em>'.
	 * @see org.ferrule.model.FlowUse
	 * @generated
	 */
	EEnum getFlowUse();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.AllowancePurpose <em>Allowance Purpose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Allowance Purpose</em>'.
	 * @see org.ferrule.model.AllowancePurpose
	 * @generated
	 */
	EEnum getAllowancePurpose();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.RatioUse <em>Ratio Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Ratio Use</em>'.
	 * @see org.ferrule.model.RatioUse
	 * @generated
	 */
	EEnum getRatioUse();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Grouping <em>Grouping</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Grouping</em>'.
	 * @see org.ferrule.model.Grouping
	 * @generated
	 */
	EEnum getGrouping();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Sorting <em>Sorting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Sorting</em>'.
	 * @see org.ferrule.model.Sorting
	 * @generated
	 */
	EEnum getSorting();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Direction <em>Direction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Direction</em>'.
	 * @see org.ferrule.model.Direction
	 * @generated
	 */
	EEnum getDirection();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.BendPlace <em>Bend Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Bend Place</em>'.
	 * @see org.ferrule.model.BendPlace
	 * @generated
	 */
	EEnum getBendPlace();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.PaperSize <em>Paper Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Paper Size</em>'.
	 * @see org.ferrule.model.PaperSize
	 * @generated
	 */
	EEnum getPaperSize();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Orientation <em>Orientation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Orientation</em>'.
	 * @see org.ferrule.model.Orientation
	 * @generated
	 */
	EEnum getOrientation();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.PrimaryUnit <em>Primary Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Primary Unit</em>'.
	 * @see org.ferrule.model.PrimaryUnit
	 * @generated
	 */
	EEnum getPrimaryUnit();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.ShownNumbers <em>Shown Numbers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Shown Numbers</em>'.
	 * @see org.ferrule.model.ShownNumbers
	 * @generated
	 */
	EEnum getShownNumbers();

	/**
	 * Returns the meta object for data type '{@link org.ferrule.quantity.Dimension <em>Dimension</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A length or diameter as printed, with its unit and its meaning; keeps its text.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Dimension</em>'.
	 * @see org.ferrule.quantity.Dimension
	 * @model instanceClass="org.ferrule.quantity.Dimension"
	 * @generated
	 */
	EDataType getDimension();

	/**
	 * Returns the meta object for data type '{@link org.ferrule.quantity.Pressure <em>Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A pressure as printed, with its unit; keeps its text.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Pressure</em>'.
	 * @see org.ferrule.quantity.Pressure
	 * @model instanceClass="org.ferrule.quantity.Pressure"
	 * @generated
	 */
	EDataType getPressure();

	/**
	 * Returns the meta object for data type '{@link org.ferrule.quantity.Offset <em>Offset</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A place in a cross-section as printed, with its unit; may be negative; keeps its text.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Offset</em>'.
	 * @see org.ferrule.quantity.Offset
	 * @model instanceClass="org.ferrule.quantity.Offset"
	 * @generated
	 */
	EDataType getOffset();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	ModelFactory getModelFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals
	{
		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ExtraKeyImpl <em>Extra Key</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ExtraKeyImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getExtraKey()
		 * @generated
		 */
		EClass EXTRA_KEY = eINSTANCE.getExtraKey();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXTRA_KEY__KEY = eINSTANCE.getExtraKey_Key();

		/**
		 * The meta object literal for the '<em><b>Json</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXTRA_KEY__JSON = eINSTANCE.getExtraKey_Json();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ElementImpl <em>Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ElementImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getElement()
		 * @generated
		 */
		EClass ELEMENT = eINSTANCE.getElement();

		/**
		 * The meta object literal for the '<em><b>Extras</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ELEMENT__EXTRAS = eINSTANCE.getElement_Extras();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.SourcedImpl <em>Sourced</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.SourcedImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSourced()
		 * @generated
		 */
		EClass SOURCED = eINSTANCE.getSourced();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCED__SOURCE = eINSTANCE.getSourced_Source();

		/**
		 * The meta object literal for the '<em><b>Page</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCED__PAGE = eINSTANCE.getSourced_Page();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCED__NOTE = eINSTANCE.getSourced_Note();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DocumentImpl <em>Document</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DocumentImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDocument()
		 * @generated
		 */
		EClass DOCUMENT = eINSTANCE.getDocument();

		/**
		 * The meta object literal for the '<em><b>Format</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT__FORMAT = eINSTANCE.getDocument_Format();

		/**
		 * The meta object literal for the '<em><b>Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT__VERSION = eINSTANCE.getDocument_Version();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT__TITLE = eINSTANCE.getDocument_Title();

		/**
		 * The meta object literal for the '<em><b>Revision</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT__REVISION = eINSTANCE.getDocument_Revision();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT__DATE = eINSTANCE.getDocument_Date();

		/**
		 * The meta object literal for the '<em><b>Sources</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DOCUMENT__SOURCES = eINSTANCE.getDocument_Sources();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.SourceImpl <em>Source</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.SourceImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSource()
		 * @generated
		 */
		EClass SOURCE = eINSTANCE.getSource();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__ID = eINSTANCE.getSource_Id();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__TITLE = eINSTANCE.getSource_Title();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__KIND = eINSTANCE.getSource_Kind();

		/**
		 * The meta object literal for the '<em><b>Revision</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__REVISION = eINSTANCE.getSource_Revision();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__DATE = eINSTANCE.getSource_Date();

		/**
		 * The meta object literal for the '<em><b>Reviewer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__REVIEWER = eINSTANCE.getSource_Reviewer();

		/**
		 * The meta object literal for the '<em><b>Reviewed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__REVIEWED = eINSTANCE.getSource_Reviewed();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DeviceLibraryImpl <em>Device Library</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DeviceLibraryImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceLibrary()
		 * @generated
		 */
		EClass DEVICE_LIBRARY = eINSTANCE.getDeviceLibrary();

		/**
		 * The meta object literal for the '<em><b>Lines</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_LIBRARY__LINES = eINSTANCE.getDeviceLibrary_Lines();

		/**
		 * The meta object literal for the '<em><b>Devices</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_LIBRARY__DEVICES = eINSTANCE.getDeviceLibrary_Devices();

		/**
		 * The meta object literal for the '<em><b>Bench</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_LIBRARY__BENCH = eINSTANCE.getDeviceLibrary_Bench();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DevicePartsImpl <em>Device Parts</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DevicePartsImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceParts()
		 * @generated
		 */
		EClass DEVICE_PARTS = eINSTANCE.getDeviceParts();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__ID = eINSTANCE.getDeviceParts_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__NAME = eINSTANCE.getDeviceParts_Name();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__KIND = eINSTANCE.getDeviceParts_Kind();

		/**
		 * The meta object literal for the '<em><b>Maker</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__MAKER = eINSTANCE.getDeviceParts_Maker();

		/**
		 * The meta object literal for the '<em><b>Model</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__MODEL = eINSTANCE.getDeviceParts_Model();

		/**
		 * The meta object literal for the '<em><b>Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__SIZE = eINSTANCE.getDeviceParts_Size();

		/**
		 * The meta object literal for the '<em><b>Effective Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__EFFECTIVE_LENGTH = eINSTANCE.getDeviceParts_EffectiveLength();

		/**
		 * The meta object literal for the '<em><b>Takes Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__TAKES_WIRE = eINSTANCE.getDeviceParts_TakesWire();

		/**
		 * The meta object literal for the '<em><b>Sections</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__SECTIONS = eINSTANCE.getDeviceParts_Sections();

		/**
		 * The meta object literal for the '<em><b>Lumens</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__LUMENS = eINSTANCE.getDeviceParts_Lumens();

		/**
		 * The meta object literal for the '<em><b>Markers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__MARKERS = eINSTANCE.getDeviceParts_Markers();

		/**
		 * The meta object literal for the '<em><b>Balloon</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__BALLOON = eINSTANCE.getDeviceParts_Balloon();

		/**
		 * The meta object literal for the '<em><b>Stent</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__STENT = eINSTANCE.getDeviceParts_Stent();

		/**
		 * The meta object literal for the '<em><b>Cutter</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__CUTTER = eINSTANCE.getDeviceParts_Cutter();

		/**
		 * The meta object literal for the '<em><b>Transducer</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__TRANSDUCER = eINSTANCE.getDeviceParts_Transducer();

		/**
		 * The meta object literal for the '<em><b>Wire</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__WIRE = eINSTANCE.getDeviceParts_Wire();

		/**
		 * The meta object literal for the '<em><b>Claims</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__CLAIMS = eINSTANCE.getDeviceParts_Claims();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DeviceLineImpl <em>Device Line</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DeviceLineImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceLine()
		 * @generated
		 */
		EClass DEVICE_LINE = eINSTANCE.getDeviceLine();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DeviceImpl <em>Device</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DeviceImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDevice()
		 * @generated
		 */
		EClass DEVICE = eINSTANCE.getDevice();

		/**
		 * The meta object literal for the '<em><b>Line</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE__LINE = eINSTANCE.getDevice_Line();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ShaftSectionImpl <em>Shaft Section</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ShaftSectionImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getShaftSection()
		 * @generated
		 */
		EClass SHAFT_SECTION = eINSTANCE.getShaftSection();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__NAME = eINSTANCE.getShaftSection_Name();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__FROM = eINSTANCE.getShaftSection_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__TO = eINSTANCE.getShaftSection_To();

		/**
		 * The meta object literal for the '<em><b>Od</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__OD = eINSTANCE.getShaftSection_Od();

		/**
		 * The meta object literal for the '<em><b>Od Proximal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__OD_PROXIMAL = eINSTANCE.getShaftSection_OdProximal();

		/**
		 * The meta object literal for the '<em><b>Od After</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__OD_AFTER = eINSTANCE.getShaftSection_OdAfter();

		/**
		 * The meta object literal for the '<em><b>Od After Proximal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__OD_AFTER_PROXIMAL = eINSTANCE.getShaftSection_OdAfterProximal();

		/**
		 * The meta object literal for the '<em><b>Oval</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHAFT_SECTION__OVAL = eINSTANCE.getShaftSection_Oval();

		/**
		 * The meta object literal for the '<em><b>Discs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHAFT_SECTION__DISCS = eINSTANCE.getShaftSection_Discs();

		/**
		 * The meta object literal for the '<em><b>Rigid</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__RIGID = eINSTANCE.getShaftSection_Rigid();

		/**
		 * The meta object literal for the '<em><b>Stiffness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__STIFFNESS = eINSTANCE.getShaftSection_Stiffness();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.OvalImpl <em>Oval</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.OvalImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getOval()
		 * @generated
		 */
		EClass OVAL = eINSTANCE.getOval();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OVAL__WIDTH = eINSTANCE.getOval_Width();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OVAL__HEIGHT = eINSTANCE.getOval_Height();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DiscImpl <em>Disc</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DiscImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDisc()
		 * @generated
		 */
		EClass DISC = eINSTANCE.getDisc();

		/**
		 * The meta object literal for the '<em><b>X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DISC__X = eINSTANCE.getDisc_X();

		/**
		 * The meta object literal for the '<em><b>Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DISC__Y = eINSTANCE.getDisc_Y();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DISC__DIAMETER = eINSTANCE.getDisc_Diameter();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.LumenImpl <em>Lumen</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.LumenImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLumen()
		 * @generated
		 */
		EClass LUMEN = eINSTANCE.getLumen();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN__NAME = eINSTANCE.getLumen_Name();

		/**
		 * The meta object literal for the '<em><b>Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN__USE = eINSTANCE.getLumen_Use();

		/**
		 * The meta object literal for the '<em><b>Distal At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN__DISTAL_AT = eINSTANCE.getLumen_DistalAt();

		/**
		 * The meta object literal for the '<em><b>Proximal At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN__PROXIMAL_AT = eINSTANCE.getLumen_ProximalAt();

		/**
		 * The meta object literal for the '<em><b>Opens</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN__OPENS = eINSTANCE.getLumen_Opens();

		/**
		 * The meta object literal for the '<em><b>Sections</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LUMEN__SECTIONS = eINSTANCE.getLumen_Sections();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.LumenSectionImpl <em>Lumen Section</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.LumenSectionImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenSection()
		 * @generated
		 */
		EClass LUMEN_SECTION = eINSTANCE.getLumenSection();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN_SECTION__NAME = eINSTANCE.getLumenSection_Name();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN_SECTION__FROM = eINSTANCE.getLumenSection_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN_SECTION__TO = eINSTANCE.getLumenSection_To();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN_SECTION__ID = eINSTANCE.getLumenSection_Id();

		/**
		 * The meta object literal for the '<em><b>Id Distal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN_SECTION__ID_DISTAL = eINSTANCE.getLumenSection_IdDistal();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.MarkerImpl <em>Marker</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.MarkerImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getMarker()
		 * @generated
		 */
		EClass MARKER = eINSTANCE.getMarker();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MARKER__AT = eINSTANCE.getMarker_At();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MARKER__WIDTH = eINSTANCE.getMarker_Width();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.BalloonImpl <em>Balloon</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.BalloonImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getBalloon()
		 * @generated
		 */
		EClass BALLOON = eINSTANCE.getBalloon();

		/**
		 * The meta object literal for the '<em><b>Section</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BALLOON__SECTION = eINSTANCE.getBalloon_Section();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BALLOON__DIAMETER = eINSTANCE.getBalloon_Diameter();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BALLOON__LENGTH = eINSTANCE.getBalloon_Length();

		/**
		 * The meta object literal for the '<em><b>Nominal Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BALLOON__NOMINAL_PRESSURE = eINSTANCE.getBalloon_NominalPressure();

		/**
		 * The meta object literal for the '<em><b>Rated Burst Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BALLOON__RATED_BURST_PRESSURE = eINSTANCE.getBalloon_RatedBurstPressure();

		/**
		 * The meta object literal for the '<em><b>Compliance</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BALLOON__COMPLIANCE = eINSTANCE.getBalloon_Compliance();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ComplianceRowImpl <em>Compliance Row</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ComplianceRowImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getComplianceRow()
		 * @generated
		 */
		EClass COMPLIANCE_ROW = eINSTANCE.getComplianceRow();

		/**
		 * The meta object literal for the '<em><b>Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMPLIANCE_ROW__PRESSURE = eINSTANCE.getComplianceRow_Pressure();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMPLIANCE_ROW__DIAMETER = eINSTANCE.getComplianceRow_Diameter();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.StentImpl <em>Stent</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.StentImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getStent()
		 * @generated
		 */
		EClass STENT = eINSTANCE.getStent();

		/**
		 * The meta object literal for the '<em><b>Section</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__SECTION = eINSTANCE.getStent_Section();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__DIAMETER = eINSTANCE.getStent_Diameter();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__LENGTH = eINSTANCE.getStent_Length();

		/**
		 * The meta object literal for the '<em><b>Maximum Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__MAXIMUM_DIAMETER = eINSTANCE.getStent_MaximumDiameter();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__MATERIAL = eINSTANCE.getStent_Material();

		/**
		 * The meta object literal for the '<em><b>Strut Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__STRUT_THICKNESS = eINSTANCE.getStent_StrutThickness();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.CutterImpl <em>Cutter</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.CutterImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getCutter()
		 * @generated
		 */
		EClass CUTTER = eINSTANCE.getCutter();

		/**
		 * The meta object literal for the '<em><b>Section</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUTTER__SECTION = eINSTANCE.getCutter_Section();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUTTER__TYPE = eINSTANCE.getCutter_Type();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUTTER__DIAMETER = eINSTANCE.getCutter_Diameter();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.TransducerImpl <em>Transducer</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.TransducerImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getTransducer()
		 * @generated
		 */
		EClass TRANSDUCER = eINSTANCE.getTransducer();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSDUCER__TYPE = eINSTANCE.getTransducer_Type();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSDUCER__AT = eINSTANCE.getTransducer_At();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.WireTraitsImpl <em>Wire Traits</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.WireTraitsImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getWireTraits()
		 * @generated
		 */
		EClass WIRE_TRAITS = eINSTANCE.getWireTraits();

		/**
		 * The meta object literal for the '<em><b>Tip Load</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WIRE_TRAITS__TIP_LOAD = eINSTANCE.getWireTraits_TipLoad();

		/**
		 * The meta object literal for the '<em><b>Tip Shape</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WIRE_TRAITS__TIP_SHAPE = eINSTANCE.getWireTraits_TipShape();

		/**
		 * The meta object literal for the '<em><b>Extendable</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WIRE_TRAITS__EXTENDABLE = eINSTANCE.getWireTraits_Extendable();

		/**
		 * The meta object literal for the '<em><b>Coating</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WIRE_TRAITS__COATING = eINSTANCE.getWireTraits_Coating();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ClaimImpl <em>Claim</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ClaimImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getClaim()
		 * @generated
		 */
		EClass CLAIM = eINSTANCE.getClaim();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__TYPE = eINSTANCE.getClaim_Type();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__VALUE = eINSTANCE.getClaim_Value();

		/**
		 * The meta object literal for the '<em><b>Kinds</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__KINDS = eINSTANCE.getClaim_Kinds();

		/**
		 * The meta object literal for the '<em><b>Sizes</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__SIZES = eINSTANCE.getClaim_Sizes();

		/**
		 * The meta object literal for the '<em><b>Devices</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__DEVICES = eINSTANCE.getClaim_Devices();

		/**
		 * The meta object literal for the '<em><b>Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__WIRE = eINSTANCE.getClaim_Wire();

		/**
		 * The meta object literal for the '<em><b>Alone</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__ALONE = eINSTANCE.getClaim_Alone();

		/**
		 * The meta object literal for the '<em><b>Covers</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__COVERS = eINSTANCE.getClaim_Covers();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.BenchResultImpl <em>Bench Result</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.BenchResultImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getBenchResult()
		 * @generated
		 */
		EClass BENCH_RESULT = eINSTANCE.getBenchResult();

		/**
		 * The meta object literal for the '<em><b>Outer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__OUTER = eINSTANCE.getBenchResult_Outer();

		/**
		 * The meta object literal for the '<em><b>Lumen</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__LUMEN = eINSTANCE.getBenchResult_Lumen();

		/**
		 * The meta object literal for the '<em><b>Inner</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__INNER = eINSTANCE.getBenchResult_Inner();

		/**
		 * The meta object literal for the '<em><b>Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__WIRE = eINSTANCE.getBenchResult_Wire();

		/**
		 * The meta object literal for the '<em><b>Result</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__RESULT = eINSTANCE.getBenchResult_Result();

		/**
		 * The meta object literal for the '<em><b>Covers</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__COVERS = eINSTANCE.getBenchResult_Covers();

		/**
		 * The meta object literal for the '<em><b>Samples</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__SAMPLES = eINSTANCE.getBenchResult_Samples();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.RuleSetImpl <em>Rule Set</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.RuleSetImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getRuleSet()
		 * @generated
		 */
		EClass RULE_SET = eINSTANCE.getRuleSet();

		/**
		 * The meta object literal for the '<em><b>Spans</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__SPANS = eINSTANCE.getRuleSet_Spans();

		/**
		 * The meta object literal for the '<em><b>Clearances</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__CLEARANCES = eINSTANCE.getRuleSet_Clearances();

		/**
		 * The meta object literal for the '<em><b>After Use</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__AFTER_USE = eINSTANCE.getRuleSet_AfterUse();

		/**
		 * The meta object literal for the '<em><b>Flow Limits</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__FLOW_LIMITS = eINSTANCE.getRuleSet_FlowLimits();

		/**
		 * The meta object literal for the '<em><b>Allowances</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__ALLOWANCES = eINSTANCE.getRuleSet_Allowances();

		/**
		 * The meta object literal for the '<em><b>Ratio Bands</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__RATIO_BANDS = eINSTANCE.getRuleSet_RatioBands();

		/**
		 * The meta object literal for the '<em><b>Chance Limits</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__CHANCE_LIMITS = eINSTANCE.getRuleSet_ChanceLimits();

		/**
		 * The meta object literal for the '<em><b>Confidence</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RULE_SET__CONFIDENCE = eINSTANCE.getRuleSet_Confidence();

		/**
		 * The meta object literal for the '<em><b>Coverage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RULE_SET__COVERAGE = eINSTANCE.getRuleSet_Coverage();

		/**
		 * The meta object literal for the '<em><b>Wire Ahead</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RULE_SET__WIRE_AHEAD = eINSTANCE.getRuleSet_WireAhead();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.SpanImpl <em>Span</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.SpanImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSpan()
		 * @generated
		 */
		EClass SPAN = eINSTANCE.getSpan();

		/**
		 * The meta object literal for the '<em><b>Figure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPAN__FIGURE = eINSTANCE.getSpan_Figure();

		/**
		 * The meta object literal for the '<em><b>Kinds</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPAN__KINDS = eINSTANCE.getSpan_Kinds();

		/**
		 * The meta object literal for the '<em><b>Below</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPAN__BELOW = eINSTANCE.getSpan_Below();

		/**
		 * The meta object literal for the '<em><b>Above</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPAN__ABOVE = eINSTANCE.getSpan_Above();

		/**
		 * The meta object literal for the '<em><b>Runs Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPAN__RUNS_LOW = eINSTANCE.getSpan_RunsLow();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ClearanceRuleImpl <em>Clearance Rule</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ClearanceRuleImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getClearanceRule()
		 * @generated
		 */
		EClass CLEARANCE_RULE = eINSTANCE.getClearanceRule();

		/**
		 * The meta object literal for the '<em><b>Outer</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLEARANCE_RULE__OUTER = eINSTANCE.getClearanceRule_Outer();

		/**
		 * The meta object literal for the '<em><b>Inner</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLEARANCE_RULE__INNER = eINSTANCE.getClearanceRule_Inner();

		/**
		 * The meta object literal for the '<em><b>Required</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLEARANCE_RULE__REQUIRED = eINSTANCE.getClearanceRule_Required();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.AfterUseRuleImpl <em>After Use Rule</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.AfterUseRuleImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getAfterUseRule()
		 * @generated
		 */
		EClass AFTER_USE_RULE = eINSTANCE.getAfterUseRule();

		/**
		 * The meta object literal for the '<em><b>Kinds</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AFTER_USE_RULE__KINDS = eINSTANCE.getAfterUseRule_Kinds();

		/**
		 * The meta object literal for the '<em><b>Growth Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AFTER_USE_RULE__GROWTH_LOW = eINSTANCE.getAfterUseRule_GrowthLow();

		/**
		 * The meta object literal for the '<em><b>Growth Centre</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AFTER_USE_RULE__GROWTH_CENTRE = eINSTANCE.getAfterUseRule_GrowthCentre();

		/**
		 * The meta object literal for the '<em><b>Growth High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AFTER_USE_RULE__GROWTH_HIGH = eINSTANCE.getAfterUseRule_GrowthHigh();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.FlowLimitImpl <em>Flow Limit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.FlowLimitImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getFlowLimit()
		 * @generated
		 */
		EClass FLOW_LIMIT = eINSTANCE.getFlowLimit();

		/**
		 * The meta object literal for the '<em><b>Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLOW_LIMIT__USE = eINSTANCE.getFlowLimit_Use();

		/**
		 * The meta object literal for the '<em><b>Least</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLOW_LIMIT__LEAST = eINSTANCE.getFlowLimit_Least();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.AllowanceImpl <em>Allowance</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.AllowanceImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getAllowance()
		 * @generated
		 */
		EClass ALLOWANCE = eINSTANCE.getAllowance();

		/**
		 * The meta object literal for the '<em><b>Purpose</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALLOWANCE__PURPOSE = eINSTANCE.getAllowance_Purpose();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALLOWANCE__LENGTH = eINSTANCE.getAllowance_Length();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.RatioBandImpl <em>Ratio Band</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.RatioBandImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getRatioBand()
		 * @generated
		 */
		EClass RATIO_BAND = eINSTANCE.getRatioBand();

		/**
		 * The meta object literal for the '<em><b>Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIO_BAND__USE = eINSTANCE.getRatioBand_Use();

		/**
		 * The meta object literal for the '<em><b>Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIO_BAND__LOW = eINSTANCE.getRatioBand_Low();

		/**
		 * The meta object literal for the '<em><b>High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIO_BAND__HIGH = eINSTANCE.getRatioBand_High();

		/**
		 * The meta object literal for the '<em><b>Meaning</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIO_BAND__MEANING = eINSTANCE.getRatioBand_Meaning();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ChanceLimitImpl <em>Chance Limit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ChanceLimitImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getChanceLimit()
		 * @generated
		 */
		EClass CHANCE_LIMIT = eINSTANCE.getChanceLimit();

		/**
		 * The meta object literal for the '<em><b>Greatest</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHANCE_LIMIT__GREATEST = eINSTANCE.getChanceLimit_Greatest();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.FitChartImpl <em>Fit Chart</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.FitChartImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getFitChart()
		 * @generated
		 */
		EClass FIT_CHART = eINSTANCE.getFitChart();

		/**
		 * The meta object literal for the '<em><b>Audience</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIT_CHART__AUDIENCE = eINSTANCE.getFitChart_Audience();

		/**
		 * The meta object literal for the '<em><b>Author</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIT_CHART__AUTHOR = eINSTANCE.getFitChart_Author();

		/**
		 * The meta object literal for the '<em><b>Libraries</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIT_CHART__LIBRARIES = eINSTANCE.getFitChart_Libraries();

		/**
		 * The meta object literal for the '<em><b>Rules</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIT_CHART__RULES = eINSTANCE.getFitChart_Rules();

		/**
		 * The meta object literal for the '<em><b>Outer</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__OUTER = eINSTANCE.getFitChart_Outer();

		/**
		 * The meta object literal for the '<em><b>Inner</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__INNER = eINSTANCE.getFitChart_Inner();

		/**
		 * The meta object literal for the '<em><b>Conditions</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__CONDITIONS = eINSTANCE.getFitChart_Conditions();

		/**
		 * The meta object literal for the '<em><b>Path</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__PATH = eINSTANCE.getFitChart_Path();

		/**
		 * The meta object literal for the '<em><b>Lesion</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__LESION = eINSTANCE.getFitChart_Lesion();

		/**
		 * The meta object literal for the '<em><b>Paper</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__PAPER = eINSTANCE.getFitChart_Paper();

		/**
		 * The meta object literal for the '<em><b>Footnotes</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIT_CHART__FOOTNOTES = eINSTANCE.getFitChart_Footnotes();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.AxisImpl <em>Axis</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.AxisImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getAxis()
		 * @generated
		 */
		EClass AXIS = eINSTANCE.getAxis();

		/**
		 * The meta object literal for the '<em><b>Kinds</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AXIS__KINDS = eINSTANCE.getAxis_Kinds();

		/**
		 * The meta object literal for the '<em><b>Devices</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AXIS__DEVICES = eINSTANCE.getAxis_Devices();

		/**
		 * The meta object literal for the '<em><b>Hidden</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AXIS__HIDDEN = eINSTANCE.getAxis_Hidden();

		/**
		 * The meta object literal for the '<em><b>Group By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AXIS__GROUP_BY = eINSTANCE.getAxis_GroupBy();

		/**
		 * The meta object literal for the '<em><b>Sort By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AXIS__SORT_BY = eINSTANCE.getAxis_SortBy();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ConditionsImpl <em>Conditions</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ConditionsImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getConditions()
		 * @generated
		 */
		EClass CONDITIONS = eINSTANCE.getConditions();

		/**
		 * The meta object literal for the '<em><b>Direction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONDITIONS__DIRECTION = eINSTANCE.getConditions_Direction();

		/**
		 * The meta object literal for the '<em><b>Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONDITIONS__WIRE = eINSTANCE.getConditions_Wire();

		/**
		 * The meta object literal for the '<em><b>Reach</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONDITIONS__REACH = eINSTANCE.getConditions_Reach();

		/**
		 * The meta object literal for the '<em><b>Inside</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CONDITIONS__INSIDE = eINSTANCE.getConditions_Inside();

		/**
		 * The meta object literal for the '<em><b>Through</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CONDITIONS__THROUGH = eINSTANCE.getConditions_Through();

		/**
		 * The meta object literal for the '<em><b>Bends</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CONDITIONS__BENDS = eINSTANCE.getConditions_Bends();

		/**
		 * The meta object literal for the '<em><b>After Inflation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONDITIONS__AFTER_INFLATION = eINSTANCE.getConditions_AfterInflation();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.OccupantImpl <em>Occupant</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.OccupantImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getOccupant()
		 * @generated
		 */
		EClass OCCUPANT = eINSTANCE.getOccupant();

		/**
		 * The meta object literal for the '<em><b>Device</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OCCUPANT__DEVICE = eINSTANCE.getOccupant_Device();

		/**
		 * The meta object literal for the '<em><b>Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OCCUPANT__WIRE = eINSTANCE.getOccupant_Wire();

		/**
		 * The meta object literal for the '<em><b>Tip Ahead</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OCCUPANT__TIP_AHEAD = eINSTANCE.getOccupant_TipAhead();

		/**
		 * The meta object literal for the '<em><b>Used</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OCCUPANT__USED = eINSTANCE.getOccupant_Used();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ThroughExtensionImpl <em>Through Extension</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ThroughExtensionImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getThroughExtension()
		 * @generated
		 */
		EClass THROUGH_EXTENSION = eINSTANCE.getThroughExtension();

		/**
		 * The meta object literal for the '<em><b>Extension</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute THROUGH_EXTENSION__EXTENSION = eINSTANCE.getThroughExtension_Extension();

		/**
		 * The meta object literal for the '<em><b>Protrusion</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute THROUGH_EXTENSION__PROTRUSION = eINSTANCE.getThroughExtension_Protrusion();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.BendImpl <em>Bend</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.BendImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getBend()
		 * @generated
		 */
		EClass BEND = eINSTANCE.getBend();

		/**
		 * The meta object literal for the '<em><b>Where</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BEND__WHERE = eINSTANCE.getBend_Where();

		/**
		 * The meta object literal for the '<em><b>Radius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BEND__RADIUS = eINSTANCE.getBend_Radius();

		/**
		 * The meta object literal for the '<em><b>Angle Degrees</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BEND__ANGLE_DEGREES = eINSTANCE.getBend_AngleDegrees();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.VesselPathImpl <em>Vessel Path</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.VesselPathImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getVesselPath()
		 * @generated
		 */
		EClass VESSEL_PATH = eINSTANCE.getVesselPath();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_PATH__NAME = eINSTANCE.getVesselPath_Name();

		/**
		 * The meta object literal for the '<em><b>Segments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference VESSEL_PATH__SEGMENTS = eINSTANCE.getVesselPath_Segments();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.VesselSegmentImpl <em>Vessel Segment</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.VesselSegmentImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getVesselSegment()
		 * @generated
		 */
		EClass VESSEL_SEGMENT = eINSTANCE.getVesselSegment();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_SEGMENT__NAME = eINSTANCE.getVesselSegment_Name();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_SEGMENT__LENGTH = eINSTANCE.getVesselSegment_Length();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_SEGMENT__DIAMETER = eINSTANCE.getVesselSegment_Diameter();

		/**
		 * The meta object literal for the '<em><b>Bend Radius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_SEGMENT__BEND_RADIUS = eINSTANCE.getVesselSegment_BendRadius();

		/**
		 * The meta object literal for the '<em><b>Bend Angle Degrees</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_SEGMENT__BEND_ANGLE_DEGREES = eINSTANCE.getVesselSegment_BendAngleDegrees();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.LesionImpl <em>Lesion</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.LesionImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLesion()
		 * @generated
		 */
		EClass LESION = eINSTANCE.getLesion();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION__NAME = eINSTANCE.getLesion_Name();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION__AT = eINSTANCE.getLesion_At();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION__LENGTH = eINSTANCE.getLesion_Length();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION__DIAMETER = eINSTANCE.getLesion_Diameter();

		/**
		 * The meta object literal for the '<em><b>Reference</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION__REFERENCE = eINSTANCE.getLesion_Reference();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.PaperImpl <em>Paper</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.PaperImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPaper()
		 * @generated
		 */
		EClass PAPER = eINSTANCE.getPaper();

		/**
		 * The meta object literal for the '<em><b>Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER__SIZE = eINSTANCE.getPaper_Size();

		/**
		 * The meta object literal for the '<em><b>Orientation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER__ORIENTATION = eINSTANCE.getPaper_Orientation();

		/**
		 * The meta object literal for the '<em><b>Primary Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER__PRIMARY_UNIT = eINSTANCE.getPaper_PrimaryUnit();

		/**
		 * The meta object literal for the '<em><b>Show Numbers</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER__SHOW_NUMBERS = eINSTANCE.getPaper_ShowNumbers();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.SourceKind <em>Source Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.SourceKind
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSourceKind()
		 * @generated
		 */
		EEnum SOURCE_KIND = eINSTANCE.getSourceKind();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.DeviceKind <em>Device Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.DeviceKind
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceKind()
		 * @generated
		 */
		EEnum DEVICE_KIND = eINSTANCE.getDeviceKind();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.LumenUse <em>Lumen Use</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.LumenUse
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenUse()
		 * @generated
		 */
		EEnum LUMEN_USE = eINSTANCE.getLumenUse();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.LumenOpening <em>Lumen Opening</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.LumenOpening
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenOpening()
		 * @generated
		 */
		EEnum LUMEN_OPENING = eINSTANCE.getLumenOpening();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.CutterType <em>Cutter Type</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.CutterType
		 * @see org.ferrule.model.impl.ModelPackageImpl#getCutterType()
		 * @generated
		 */
		EEnum CUTTER_TYPE = eINSTANCE.getCutterType();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.TransducerType <em>Transducer Type</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.TransducerType
		 * @see org.ferrule.model.impl.ModelPackageImpl#getTransducerType()
		 * @generated
		 */
		EEnum TRANSDUCER_TYPE = eINSTANCE.getTransducerType();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.ClaimType <em>Claim Type</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.ClaimType
		 * @see org.ferrule.model.impl.ModelPackageImpl#getClaimType()
		 * @generated
		 */
		EEnum CLAIM_TYPE = eINSTANCE.getClaimType();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Phase <em>Phase</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Phase
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPhase()
		 * @generated
		 */
		EEnum PHASE = eINSTANCE.getPhase();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.BenchOutcome <em>Bench Outcome</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.BenchOutcome
		 * @see org.ferrule.model.impl.ModelPackageImpl#getBenchOutcome()
		 * @generated
		 */
		EEnum BENCH_OUTCOME = eINSTANCE.getBenchOutcome();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.FigureClass <em>Figure Class</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.FigureClass
		 * @see org.ferrule.model.impl.ModelPackageImpl#getFigureClass()
		 * @generated
		 */
		EEnum FIGURE_CLASS = eINSTANCE.getFigureClass();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.FlowUse <em>Flow Use</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.FlowUse
		 * @see org.ferrule.model.impl.ModelPackageImpl#getFlowUse()
		 * @generated
		 */
		EEnum FLOW_USE = eINSTANCE.getFlowUse();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.AllowancePurpose <em>Allowance Purpose</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.AllowancePurpose
		 * @see org.ferrule.model.impl.ModelPackageImpl#getAllowancePurpose()
		 * @generated
		 */
		EEnum ALLOWANCE_PURPOSE = eINSTANCE.getAllowancePurpose();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.RatioUse <em>Ratio Use</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.RatioUse
		 * @see org.ferrule.model.impl.ModelPackageImpl#getRatioUse()
		 * @generated
		 */
		EEnum RATIO_USE = eINSTANCE.getRatioUse();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Grouping <em>Grouping</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Grouping
		 * @see org.ferrule.model.impl.ModelPackageImpl#getGrouping()
		 * @generated
		 */
		EEnum GROUPING = eINSTANCE.getGrouping();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Sorting <em>Sorting</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Sorting
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSorting()
		 * @generated
		 */
		EEnum SORTING = eINSTANCE.getSorting();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Direction <em>Direction</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Direction
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDirection()
		 * @generated
		 */
		EEnum DIRECTION = eINSTANCE.getDirection();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.BendPlace <em>Bend Place</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.BendPlace
		 * @see org.ferrule.model.impl.ModelPackageImpl#getBendPlace()
		 * @generated
		 */
		EEnum BEND_PLACE = eINSTANCE.getBendPlace();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.PaperSize <em>Paper Size</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.PaperSize
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPaperSize()
		 * @generated
		 */
		EEnum PAPER_SIZE = eINSTANCE.getPaperSize();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Orientation <em>Orientation</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Orientation
		 * @see org.ferrule.model.impl.ModelPackageImpl#getOrientation()
		 * @generated
		 */
		EEnum ORIENTATION = eINSTANCE.getOrientation();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.PrimaryUnit <em>Primary Unit</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.PrimaryUnit
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPrimaryUnit()
		 * @generated
		 */
		EEnum PRIMARY_UNIT = eINSTANCE.getPrimaryUnit();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.ShownNumbers <em>Shown Numbers</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.ShownNumbers
		 * @see org.ferrule.model.impl.ModelPackageImpl#getShownNumbers()
		 * @generated
		 */
		EEnum SHOWN_NUMBERS = eINSTANCE.getShownNumbers();

		/**
		 * The meta object literal for the '<em>Dimension</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.quantity.Dimension
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDimension()
		 * @generated
		 */
		EDataType DIMENSION = eINSTANCE.getDimension();

		/**
		 * The meta object literal for the '<em>Pressure</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.quantity.Pressure
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPressure()
		 * @generated
		 */
		EDataType PRESSURE = eINSTANCE.getPressure();

		/**
		 * The meta object literal for the '<em>Offset</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.quantity.Offset
		 * @see org.ferrule.model.impl.ModelPackageImpl#getOffset()
		 * @generated
		 */
		EDataType OFFSET = eINSTANCE.getOffset();

	}

} //ModelPackage
