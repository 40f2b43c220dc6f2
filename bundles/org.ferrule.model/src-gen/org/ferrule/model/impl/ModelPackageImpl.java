/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import org.ferrule.model.Access;
import org.ferrule.model.Advised;
import org.ferrule.model.AfterUseRule;
import org.ferrule.model.Allowance;
import org.ferrule.model.AllowancePurpose;
import org.ferrule.model.AttemptOutcome;
import org.ferrule.model.Axis;
import org.ferrule.model.Balloon;
import org.ferrule.model.BenchOutcome;
import org.ferrule.model.BenchResult;
import org.ferrule.model.Bend;
import org.ferrule.model.BendPlace;
import org.ferrule.model.Carrier;
import org.ferrule.model.CaseAim;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.CaseEnd;
import org.ferrule.model.ChanceLimit;
import org.ferrule.model.Claim;
import org.ferrule.model.ClaimType;
import org.ferrule.model.ClearanceRule;
import org.ferrule.model.ClosedDevice;
import org.ferrule.model.ClosedStep;
import org.ferrule.model.Closing;
import org.ferrule.model.ComplianceRow;
import org.ferrule.model.Conditions;
import org.ferrule.model.Costed;
import org.ferrule.model.Costs;
import org.ferrule.model.Cutter;
import org.ferrule.model.CutterType;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Direction;
import org.ferrule.model.Disc;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentHash;
import org.ferrule.model.Element;
import org.ferrule.model.ExtraKey;
import org.ferrule.model.Fact;
import org.ferrule.model.FigureClass;
import org.ferrule.model.FitChart;
import org.ferrule.model.FlowLimit;
import org.ferrule.model.FlowUse;
import org.ferrule.model.Grouping;
import org.ferrule.model.Hazard;
import org.ferrule.model.Lesion;
import org.ferrule.model.LesionMeasures;
import org.ferrule.model.LesionTrait;
import org.ferrule.model.LoggedAttempt;
import org.ferrule.model.Lumen;
import org.ferrule.model.LumenOpening;
import org.ferrule.model.LumenSection;
import org.ferrule.model.LumenUse;
import org.ferrule.model.Marker;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Move;
import org.ferrule.model.Need;
import org.ferrule.model.Occupant;
import org.ferrule.model.Orientation;
import org.ferrule.model.Oval;
import org.ferrule.model.Paper;
import org.ferrule.model.PaperSize;
import org.ferrule.model.PatientFigures;
import org.ferrule.model.Phase;
import org.ferrule.model.Placement;
import org.ferrule.model.PlannedTry;
import org.ferrule.model.PrimaryUnit;
import org.ferrule.model.Prior;
import org.ferrule.model.Published;
import org.ferrule.model.RatioBand;
import org.ferrule.model.RatioUse;
import org.ferrule.model.ResourceKind;
import org.ferrule.model.Role;
import org.ferrule.model.RoleGoal;
import org.ferrule.model.RoleTask;
import org.ferrule.model.RuleSet;
import org.ferrule.model.Setup;
import org.ferrule.model.Sex;
import org.ferrule.model.ShaftSection;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.ShownNumbers;
import org.ferrule.model.SideBranch;
import org.ferrule.model.SignOff;
import org.ferrule.model.SignedRow;
import org.ferrule.model.Sorting;
import org.ferrule.model.Source;
import org.ferrule.model.SourceKind;
import org.ferrule.model.Sourced;
import org.ferrule.model.Span;
import org.ferrule.model.StatedFact;
import org.ferrule.model.Stent;
import org.ferrule.model.StockItem;
import org.ferrule.model.StockLot;
import org.ferrule.model.StopRule;
import org.ferrule.model.SystemInPlace;
import org.ferrule.model.SystemSlot;
import org.ferrule.model.Technique;
import org.ferrule.model.TechniqueAxis;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.model.ThroughExtension;
import org.ferrule.model.Transducer;
import org.ferrule.model.TransducerType;
import org.ferrule.model.UsedUnit;
import org.ferrule.model.VesselPath;
import org.ferrule.model.VesselSegment;
import org.ferrule.model.WireTraits;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Offset;
import org.ferrule.quantity.Pressure;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class ModelPackageImpl extends EPackageImpl implements ModelPackage
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass extraKeyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass elementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sourcedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass documentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sourceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass deviceLibraryEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass devicePartsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass deviceLineEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass deviceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass shaftSectionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass ovalEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass discEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass lumenEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass lumenSectionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass markerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass balloonEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass complianceRowEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass cutterEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass transducerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass wireTraitsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass claimEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass benchResultEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass ruleSetEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass spanEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass clearanceRuleEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass afterUseRuleEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass flowLimitEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass allowanceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass ratioBandEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass chanceLimitEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fitChartEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass signOffEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass signedRowEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass axisEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass conditionsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass occupantEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass throughExtensionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass bendEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass vesselPathEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass vesselSegmentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass lesionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass paperEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass techniqueLibraryEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass factEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass moveEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass costedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass advisedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass setupEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass techniqueEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass roleEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass needEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass placementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass plannedTryEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass priorEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass publishedEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stopRuleEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass caseDocumentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass accessEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass systemInPlaceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sideBranchEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass statedFactEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass lesionMeasuresEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass patientFiguresEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass caseAimEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass costsEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass loggedAttemptEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass usedUnitEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass closingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass closedStepEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass closedDeviceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass documentHashEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass shelfDocumentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stockItemEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stockLotEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum sourceKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum deviceKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum lumenUseEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum lumenOpeningEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum cutterTypeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum transducerTypeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum claimTypeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum phaseEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum benchOutcomeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum figureClassEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum flowUseEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum allowancePurposeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum ratioUseEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum groupingEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum sortingEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum directionEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum bendPlaceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum paperSizeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum orientationEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum primaryUnitEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum shownNumbersEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum techniqueAxisEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum hazardEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum roleTaskEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum carrierEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum roleGoalEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum systemSlotEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum resourceKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum attemptOutcomeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum caseEndEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum sexEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum lesionTraitEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType dimensionEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType pressureEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType offsetEDataType = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see org.ferrule.model.ModelPackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private ModelPackageImpl()
	{
		super(eNS_URI, ModelFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link ModelPackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static ModelPackage init()
	{
		if (isInited) return (ModelPackage)EPackage.Registry.INSTANCE.getEPackage(ModelPackage.eNS_URI);

		// Obtain or create and register package
		Object registeredModelPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		ModelPackageImpl theModelPackage = registeredModelPackage instanceof ModelPackageImpl ? (ModelPackageImpl)registeredModelPackage : new ModelPackageImpl();

		isInited = true;

		// Create package meta-data objects
		theModelPackage.createPackageContents();

		// Initialize created meta-data
		theModelPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theModelPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(ModelPackage.eNS_URI, theModelPackage);
		return theModelPackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getExtraKey()
	{
		return extraKeyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExtraKey_Key()
	{
		return (EAttribute)extraKeyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExtraKey_Json()
	{
		return (EAttribute)extraKeyEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getElement()
	{
		return elementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getElement_Extras()
	{
		return (EReference)elementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSourced()
	{
		return sourcedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSourced_Source()
	{
		return (EAttribute)sourcedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSourced_Page()
	{
		return (EAttribute)sourcedEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSourced_Note()
	{
		return (EAttribute)sourcedEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDocument()
	{
		return documentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDocument_Format()
	{
		return (EAttribute)documentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDocument_Version()
	{
		return (EAttribute)documentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDocument_Title()
	{
		return (EAttribute)documentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDocument_Revision()
	{
		return (EAttribute)documentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDocument_Date()
	{
		return (EAttribute)documentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDocument_Sources()
	{
		return (EReference)documentEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSource()
	{
		return sourceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSource_Id()
	{
		return (EAttribute)sourceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSource_Title()
	{
		return (EAttribute)sourceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSource_Kind()
	{
		return (EAttribute)sourceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSource_Revision()
	{
		return (EAttribute)sourceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSource_Date()
	{
		return (EAttribute)sourceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSource_Reviewer()
	{
		return (EAttribute)sourceEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSource_Reviewed()
	{
		return (EAttribute)sourceEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDeviceLibrary()
	{
		return deviceLibraryEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceLibrary_Lines()
	{
		return (EReference)deviceLibraryEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceLibrary_Devices()
	{
		return (EReference)deviceLibraryEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceLibrary_Bench()
	{
		return (EReference)deviceLibraryEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDeviceParts()
	{
		return devicePartsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDeviceParts_Id()
	{
		return (EAttribute)devicePartsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDeviceParts_Name()
	{
		return (EAttribute)devicePartsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDeviceParts_Kind()
	{
		return (EAttribute)devicePartsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDeviceParts_Maker()
	{
		return (EAttribute)devicePartsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDeviceParts_Model()
	{
		return (EAttribute)devicePartsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDeviceParts_Size()
	{
		return (EAttribute)devicePartsEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDeviceParts_EffectiveLength()
	{
		return (EAttribute)devicePartsEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDeviceParts_TakesWire()
	{
		return (EAttribute)devicePartsEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceParts_Sections()
	{
		return (EReference)devicePartsEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceParts_Lumens()
	{
		return (EReference)devicePartsEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceParts_Markers()
	{
		return (EReference)devicePartsEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceParts_Balloon()
	{
		return (EReference)devicePartsEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceParts_Stent()
	{
		return (EReference)devicePartsEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceParts_Cutter()
	{
		return (EReference)devicePartsEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceParts_Transducer()
	{
		return (EReference)devicePartsEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceParts_Wire()
	{
		return (EReference)devicePartsEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getDeviceParts_Claims()
	{
		return (EReference)devicePartsEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDeviceLine()
	{
		return deviceLineEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDevice()
	{
		return deviceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDevice_Line()
	{
		return (EAttribute)deviceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getShaftSection()
	{
		return shaftSectionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShaftSection_Name()
	{
		return (EAttribute)shaftSectionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShaftSection_From()
	{
		return (EAttribute)shaftSectionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShaftSection_To()
	{
		return (EAttribute)shaftSectionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShaftSection_Od()
	{
		return (EAttribute)shaftSectionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShaftSection_OdProximal()
	{
		return (EAttribute)shaftSectionEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShaftSection_OdAfter()
	{
		return (EAttribute)shaftSectionEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShaftSection_OdAfterProximal()
	{
		return (EAttribute)shaftSectionEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getShaftSection_Oval()
	{
		return (EReference)shaftSectionEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getShaftSection_Discs()
	{
		return (EReference)shaftSectionEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShaftSection_Rigid()
	{
		return (EAttribute)shaftSectionEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShaftSection_Stiffness()
	{
		return (EAttribute)shaftSectionEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getOval()
	{
		return ovalEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOval_Width()
	{
		return (EAttribute)ovalEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOval_Height()
	{
		return (EAttribute)ovalEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDisc()
	{
		return discEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDisc_X()
	{
		return (EAttribute)discEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDisc_Y()
	{
		return (EAttribute)discEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDisc_Diameter()
	{
		return (EAttribute)discEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLumen()
	{
		return lumenEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLumen_Name()
	{
		return (EAttribute)lumenEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLumen_Use()
	{
		return (EAttribute)lumenEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLumen_DistalAt()
	{
		return (EAttribute)lumenEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLumen_ProximalAt()
	{
		return (EAttribute)lumenEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLumen_Opens()
	{
		return (EAttribute)lumenEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getLumen_Sections()
	{
		return (EReference)lumenEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLumenSection()
	{
		return lumenSectionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLumenSection_Name()
	{
		return (EAttribute)lumenSectionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLumenSection_From()
	{
		return (EAttribute)lumenSectionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLumenSection_To()
	{
		return (EAttribute)lumenSectionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLumenSection_Id()
	{
		return (EAttribute)lumenSectionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLumenSection_IdDistal()
	{
		return (EAttribute)lumenSectionEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMarker()
	{
		return markerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMarker_At()
	{
		return (EAttribute)markerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMarker_Width()
	{
		return (EAttribute)markerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBalloon()
	{
		return balloonEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBalloon_Section()
	{
		return (EAttribute)balloonEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBalloon_Diameter()
	{
		return (EAttribute)balloonEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBalloon_Length()
	{
		return (EAttribute)balloonEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBalloon_NominalPressure()
	{
		return (EAttribute)balloonEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBalloon_RatedBurstPressure()
	{
		return (EAttribute)balloonEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getBalloon_Compliance()
	{
		return (EReference)balloonEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getComplianceRow()
	{
		return complianceRowEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getComplianceRow_Pressure()
	{
		return (EAttribute)complianceRowEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getComplianceRow_Diameter()
	{
		return (EAttribute)complianceRowEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStent()
	{
		return stentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStent_Section()
	{
		return (EAttribute)stentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStent_Diameter()
	{
		return (EAttribute)stentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStent_Length()
	{
		return (EAttribute)stentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStent_MaximumDiameter()
	{
		return (EAttribute)stentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStent_Material()
	{
		return (EAttribute)stentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStent_StrutThickness()
	{
		return (EAttribute)stentEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCutter()
	{
		return cutterEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutter_Section()
	{
		return (EAttribute)cutterEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutter_Type()
	{
		return (EAttribute)cutterEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCutter_Diameter()
	{
		return (EAttribute)cutterEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTransducer()
	{
		return transducerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransducer_Type()
	{
		return (EAttribute)transducerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTransducer_At()
	{
		return (EAttribute)transducerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWireTraits()
	{
		return wireTraitsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWireTraits_TipLoad()
	{
		return (EAttribute)wireTraitsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWireTraits_TipShape()
	{
		return (EAttribute)wireTraitsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWireTraits_Extendable()
	{
		return (EAttribute)wireTraitsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWireTraits_Coating()
	{
		return (EAttribute)wireTraitsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getClaim()
	{
		return claimEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClaim_Type()
	{
		return (EAttribute)claimEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClaim_Value()
	{
		return (EAttribute)claimEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClaim_Kinds()
	{
		return (EAttribute)claimEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClaim_Sizes()
	{
		return (EAttribute)claimEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClaim_Devices()
	{
		return (EAttribute)claimEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClaim_Wire()
	{
		return (EAttribute)claimEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClaim_Alone()
	{
		return (EAttribute)claimEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClaim_Covers()
	{
		return (EAttribute)claimEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBenchResult()
	{
		return benchResultEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBenchResult_Outer()
	{
		return (EAttribute)benchResultEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBenchResult_Lumen()
	{
		return (EAttribute)benchResultEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBenchResult_Inner()
	{
		return (EAttribute)benchResultEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBenchResult_Wire()
	{
		return (EAttribute)benchResultEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBenchResult_Result()
	{
		return (EAttribute)benchResultEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBenchResult_Covers()
	{
		return (EAttribute)benchResultEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBenchResult_Samples()
	{
		return (EAttribute)benchResultEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRuleSet()
	{
		return ruleSetEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRuleSet_Spans()
	{
		return (EReference)ruleSetEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRuleSet_Clearances()
	{
		return (EReference)ruleSetEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRuleSet_AfterUse()
	{
		return (EReference)ruleSetEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRuleSet_FlowLimits()
	{
		return (EReference)ruleSetEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRuleSet_Allowances()
	{
		return (EReference)ruleSetEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRuleSet_RatioBands()
	{
		return (EReference)ruleSetEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRuleSet_ChanceLimits()
	{
		return (EReference)ruleSetEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRuleSet_Confidence()
	{
		return (EAttribute)ruleSetEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRuleSet_Coverage()
	{
		return (EAttribute)ruleSetEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRuleSet_WireAhead()
	{
		return (EAttribute)ruleSetEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSpan()
	{
		return spanEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpan_Figure()
	{
		return (EAttribute)spanEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpan_Kinds()
	{
		return (EAttribute)spanEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpan_Below()
	{
		return (EAttribute)spanEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpan_Above()
	{
		return (EAttribute)spanEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSpan_RunsLow()
	{
		return (EAttribute)spanEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getClearanceRule()
	{
		return clearanceRuleEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClearanceRule_Outer()
	{
		return (EAttribute)clearanceRuleEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClearanceRule_Inner()
	{
		return (EAttribute)clearanceRuleEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClearanceRule_Required()
	{
		return (EAttribute)clearanceRuleEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAfterUseRule()
	{
		return afterUseRuleEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAfterUseRule_Kinds()
	{
		return (EAttribute)afterUseRuleEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAfterUseRule_GrowthLow()
	{
		return (EAttribute)afterUseRuleEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAfterUseRule_GrowthCentre()
	{
		return (EAttribute)afterUseRuleEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAfterUseRule_GrowthHigh()
	{
		return (EAttribute)afterUseRuleEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFlowLimit()
	{
		return flowLimitEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFlowLimit_Use()
	{
		return (EAttribute)flowLimitEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFlowLimit_Least()
	{
		return (EAttribute)flowLimitEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAllowance()
	{
		return allowanceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAllowance_Purpose()
	{
		return (EAttribute)allowanceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAllowance_Length()
	{
		return (EAttribute)allowanceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRatioBand()
	{
		return ratioBandEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRatioBand_Use()
	{
		return (EAttribute)ratioBandEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRatioBand_Low()
	{
		return (EAttribute)ratioBandEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRatioBand_High()
	{
		return (EAttribute)ratioBandEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRatioBand_Meaning()
	{
		return (EAttribute)ratioBandEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getChanceLimit()
	{
		return chanceLimitEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getChanceLimit_Greatest()
	{
		return (EAttribute)chanceLimitEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFitChart()
	{
		return fitChartEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFitChart_Audience()
	{
		return (EAttribute)fitChartEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFitChart_Author()
	{
		return (EAttribute)fitChartEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFitChart_Libraries()
	{
		return (EAttribute)fitChartEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFitChart_Rules()
	{
		return (EAttribute)fitChartEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFitChart_Outer()
	{
		return (EReference)fitChartEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFitChart_Inner()
	{
		return (EReference)fitChartEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFitChart_Conditions()
	{
		return (EReference)fitChartEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFitChart_Path()
	{
		return (EReference)fitChartEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFitChart_Lesion()
	{
		return (EReference)fitChartEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFitChart_Paper()
	{
		return (EReference)fitChartEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFitChart_Footnotes()
	{
		return (EAttribute)fitChartEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getFitChart_SignOff()
	{
		return (EReference)fitChartEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSignOff()
	{
		return signOffEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignOff_By()
	{
		return (EAttribute)signOffEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignOff_Date()
	{
		return (EAttribute)signOffEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignOff_RuleSet()
	{
		return (EAttribute)signOffEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignOff_Asked()
	{
		return (EAttribute)signOffEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSignOff_Documents()
	{
		return (EReference)signOffEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignOff_Inner()
	{
		return (EAttribute)signOffEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSignOff_Rows()
	{
		return (EReference)signOffEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSignedRow()
	{
		return signedRowEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignedRow_Outer()
	{
		return (EAttribute)signedRowEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignedRow_In()
	{
		return (EAttribute)signedRowEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSignedRow_Out()
	{
		return (EAttribute)signedRowEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAxis()
	{
		return axisEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAxis_Kinds()
	{
		return (EAttribute)axisEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAxis_Devices()
	{
		return (EAttribute)axisEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAxis_Hidden()
	{
		return (EAttribute)axisEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAxis_GroupBy()
	{
		return (EAttribute)axisEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAxis_SortBy()
	{
		return (EAttribute)axisEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getConditions()
	{
		return conditionsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getConditions_Direction()
	{
		return (EAttribute)conditionsEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getConditions_Wire()
	{
		return (EAttribute)conditionsEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getConditions_Reach()
	{
		return (EAttribute)conditionsEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getConditions_Inside()
	{
		return (EReference)conditionsEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getConditions_Through()
	{
		return (EReference)conditionsEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getConditions_Bends()
	{
		return (EReference)conditionsEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getConditions_AfterInflation()
	{
		return (EAttribute)conditionsEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getOccupant()
	{
		return occupantEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOccupant_Device()
	{
		return (EAttribute)occupantEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOccupant_Wire()
	{
		return (EAttribute)occupantEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOccupant_TipAhead()
	{
		return (EAttribute)occupantEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOccupant_Used()
	{
		return (EAttribute)occupantEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getThroughExtension()
	{
		return throughExtensionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getThroughExtension_Extension()
	{
		return (EAttribute)throughExtensionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getThroughExtension_Protrusion()
	{
		return (EAttribute)throughExtensionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getBend()
	{
		return bendEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBend_Where()
	{
		return (EAttribute)bendEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBend_Radius()
	{
		return (EAttribute)bendEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBend_AngleDegrees()
	{
		return (EAttribute)bendEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getBend_VesselDiameter()
	{
		return (EAttribute)bendEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getVesselPath()
	{
		return vesselPathEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVesselPath_Name()
	{
		return (EAttribute)vesselPathEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getVesselPath_Segments()
	{
		return (EReference)vesselPathEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getVesselSegment()
	{
		return vesselSegmentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVesselSegment_Name()
	{
		return (EAttribute)vesselSegmentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVesselSegment_Length()
	{
		return (EAttribute)vesselSegmentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVesselSegment_Diameter()
	{
		return (EAttribute)vesselSegmentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVesselSegment_BendRadius()
	{
		return (EAttribute)vesselSegmentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getVesselSegment_BendAngleDegrees()
	{
		return (EAttribute)vesselSegmentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLesion()
	{
		return lesionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesion_Name()
	{
		return (EAttribute)lesionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesion_At()
	{
		return (EAttribute)lesionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesion_Length()
	{
		return (EAttribute)lesionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesion_Diameter()
	{
		return (EAttribute)lesionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesion_Reference()
	{
		return (EAttribute)lesionEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPaper()
	{
		return paperEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaper_Size()
	{
		return (EAttribute)paperEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaper_Orientation()
	{
		return (EAttribute)paperEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaper_PrimaryUnit()
	{
		return (EAttribute)paperEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPaper_ShowNumbers()
	{
		return (EAttribute)paperEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTechniqueLibrary()
	{
		return techniqueLibraryEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTechniqueLibrary_Situation()
	{
		return (EAttribute)techniqueLibraryEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTechniqueLibrary_Facts()
	{
		return (EReference)techniqueLibraryEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTechniqueLibrary_Setups()
	{
		return (EReference)techniqueLibraryEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTechniqueLibrary_Techniques()
	{
		return (EReference)techniqueLibraryEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTechniqueLibrary_BailOut()
	{
		return (EReference)techniqueLibraryEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTechniqueLibrary_StopRules()
	{
		return (EReference)techniqueLibraryEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFact()
	{
		return factEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFact_Id()
	{
		return (EAttribute)factEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFact_Words()
	{
		return (EAttribute)factEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMove()
	{
		return moveEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMove_Id()
	{
		return (EAttribute)moveEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMove_Name()
	{
		return (EAttribute)moveEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMove_Hazard()
	{
		return (EAttribute)moveEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMove_Roles()
	{
		return (EReference)moveEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getMove_Needs()
	{
		return (EReference)moveEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMove_Setups()
	{
		return (EAttribute)moveEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCosted()
	{
		return costedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCosted_Minutes()
	{
		return (EAttribute)costedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCosted_ContrastMl()
	{
		return (EAttribute)costedEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCosted_DoseMgy()
	{
		return (EAttribute)costedEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCosted_Money()
	{
		return (EAttribute)costedEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAdvised()
	{
		return advisedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAdvised_Changes()
	{
		return (EAttribute)advisedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAdvised_Cautions()
	{
		return (EAttribute)advisedEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAdvised_OffLabel()
	{
		return (EAttribute)advisedEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAdvised_Stop()
	{
		return (EAttribute)advisedEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getAdvised_Published()
	{
		return (EReference)advisedEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSetup()
	{
		return setupEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSetup_Leaves()
	{
		return (EReference)setupEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSetup_ExchangesWire()
	{
		return (EAttribute)setupEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTechnique()
	{
		return techniqueEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTechnique_Axis()
	{
		return (EAttribute)techniqueEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTechnique_After()
	{
		return (EAttribute)techniqueEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTechnique_Tries()
	{
		return (EReference)techniqueEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRole()
	{
		return roleEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_Id()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_Name()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_Kinds()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_Devices()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_Equipment()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_NominalDiameter()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_NominalLength()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_Wire()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_ToVesselFrom()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_ToVesselTo()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_Task()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_Carrier()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_Goal()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_Count()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRole_OnlyIfWireIsShort()
	{
		return (EAttribute)roleEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getNeed()
	{
		return needEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNeed_Fact()
	{
		return (EAttribute)needEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNeed_Vessel()
	{
		return (EAttribute)needEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNeed_Branch()
	{
		return (EAttribute)needEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPlacement()
	{
		return placementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlacement_Slot()
	{
		return (EAttribute)placementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlacement_Role()
	{
		return (EAttribute)placementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlacement_Protrusion()
	{
		return (EAttribute)placementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPlannedTry()
	{
		return plannedTryEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlannedTry_Successes()
	{
		return (EAttribute)plannedTryEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPlannedTry_Failures()
	{
		return (EAttribute)plannedTryEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPlannedTry_Prior()
	{
		return (EReference)plannedTryEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPrior()
	{
		return priorEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrior_Successes()
	{
		return (EAttribute)priorEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrior_Failures()
	{
		return (EAttribute)priorEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPrior_Label()
	{
		return (EAttribute)priorEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPublished()
	{
		return publishedEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPublished_Text()
	{
		return (EAttribute)publishedEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStopRule()
	{
		return stopRuleEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStopRule_Id()
	{
		return (EAttribute)stopRuleEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStopRule_Words()
	{
		return (EAttribute)stopRuleEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStopRule_Resource()
	{
		return (EAttribute)stopRuleEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStopRule_Limit()
	{
		return (EAttribute)stopRuleEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCaseDocument()
	{
		return caseDocumentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseDocument_Libraries()
	{
		return (EAttribute)caseDocumentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseDocument_Rules()
	{
		return (EAttribute)caseDocumentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseDocument_Techniques()
	{
		return (EAttribute)caseDocumentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseDocument_Shelf()
	{
		return (EAttribute)caseDocumentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseDocument_Day()
	{
		return (EAttribute)caseDocumentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_Access()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_System()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_Path()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_Lesion()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_Branch()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseDocument_Deliver()
	{
		return (EAttribute)caseDocumentEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_Facts()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_Measures()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_Patient()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_Aim()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_Spent()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_Log()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseDocument_Closing()
	{
		return (EReference)caseDocumentEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAccess()
	{
		return accessEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccess_Site()
	{
		return (EAttribute)accessEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAccess_Vessel()
	{
		return (EAttribute)accessEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSystemInPlace()
	{
		return systemInPlaceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSystemInPlace_Sheath()
	{
		return (EAttribute)systemInPlaceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSystemInPlace_Valve()
	{
		return (EAttribute)systemInPlaceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSystemInPlace_Guide()
	{
		return (EAttribute)systemInPlaceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSystemInPlace_Extension()
	{
		return (EReference)systemInPlaceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSystemInPlace_Microcatheter()
	{
		return (EAttribute)systemInPlaceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSystemInPlace_MainWire()
	{
		return (EAttribute)systemInPlaceEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSystemInPlace_SecondWire()
	{
		return (EAttribute)systemInPlaceEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSystemInPlace_Anchor()
	{
		return (EAttribute)systemInPlaceEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSideBranch()
	{
		return sideBranchEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSideBranch_Name()
	{
		return (EAttribute)sideBranchEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSideBranch_At()
	{
		return (EAttribute)sideBranchEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSideBranch_Diameter()
	{
		return (EAttribute)sideBranchEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSideBranch_Depth()
	{
		return (EAttribute)sideBranchEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStatedFact()
	{
		return statedFactEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStatedFact_Fact()
	{
		return (EAttribute)statedFactEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStatedFact_Holds()
	{
		return (EAttribute)statedFactEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLesionMeasures()
	{
		return lesionMeasuresEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesionMeasures_BluntStump()
	{
		return (EAttribute)lesionMeasuresEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesionMeasures_Calcification()
	{
		return (EAttribute)lesionMeasuresEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesionMeasures_BendDegrees()
	{
		return (EAttribute)lesionMeasuresEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesionMeasures_FailedBefore()
	{
		return (EAttribute)lesionMeasuresEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesionMeasures_OcclusionMonths()
	{
		return (EAttribute)lesionMeasuresEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesionMeasures_CalciumDegrees()
	{
		return (EAttribute)lesionMeasuresEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesionMeasures_CalciumThickness()
	{
		return (EAttribute)lesionMeasuresEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesionMeasures_CalciumLength()
	{
		return (EAttribute)lesionMeasuresEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLesionMeasures_Traits()
	{
		return (EAttribute)lesionMeasuresEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPatientFigures()
	{
		return patientFiguresEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPatientFigures_Age()
	{
		return (EAttribute)patientFiguresEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPatientFigures_Weight()
	{
		return (EAttribute)patientFiguresEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPatientFigures_Creatinine()
	{
		return (EAttribute)patientFiguresEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPatientFigures_Sex()
	{
		return (EAttribute)patientFiguresEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCaseAim()
	{
		return caseAimEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseAim_Objective()
	{
		return (EAttribute)caseAimEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseAim_StoppingCost()
	{
		return (EAttribute)caseAimEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseAim_TiersFirst()
	{
		return (EAttribute)caseAimEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseAim_OneNewRiskAStep()
	{
		return (EAttribute)caseAimEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseAim_SameAxisDiscount()
	{
		return (EAttribute)caseAimEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCaseAim_BudgetsLimit()
	{
		return (EAttribute)caseAimEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCaseAim_Budgets()
	{
		return (EReference)caseAimEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCosts()
	{
		return costsEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLoggedAttempt()
	{
		return loggedAttemptEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLoggedAttempt_Move()
	{
		return (EAttribute)loggedAttemptEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLoggedAttempt_Outcome()
	{
		return (EAttribute)loggedAttemptEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getLoggedAttempt_Units()
	{
		return (EReference)loggedAttemptEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLoggedAttempt_Remark()
	{
		return (EAttribute)loggedAttemptEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUsedUnit()
	{
		return usedUnitEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUsedUnit_Role()
	{
		return (EAttribute)usedUnitEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUsedUnit_Item()
	{
		return (EAttribute)usedUnitEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUsedUnit_Lot()
	{
		return (EAttribute)usedUnitEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getClosing()
	{
		return closingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClosing_Closed()
	{
		return (EAttribute)closingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClosing_Ended()
	{
		return (EAttribute)closingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getClosing_Plan()
	{
		return (EReference)closingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getClosing_Devices()
	{
		return (EReference)closingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getClosing_Hashes()
	{
		return (EReference)closingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getClosedStep()
	{
		return closedStepEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClosedStep_Move()
	{
		return (EAttribute)closedStepEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClosedStep_Name()
	{
		return (EAttribute)closedStepEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClosedStep_Devices()
	{
		return (EAttribute)closedStepEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getClosedDevice()
	{
		return closedDeviceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClosedDevice_Id()
	{
		return (EAttribute)closedDeviceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClosedDevice_Item()
	{
		return (EAttribute)closedDeviceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClosedDevice_Lot()
	{
		return (EAttribute)closedDeviceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClosedDevice_Expiry()
	{
		return (EAttribute)closedDeviceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDocumentHash()
	{
		return documentHashEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDocumentHash_File()
	{
		return (EAttribute)documentHashEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDocumentHash_Revision()
	{
		return (EAttribute)documentHashEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDocumentHash_Sha256()
	{
		return (EAttribute)documentHashEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getShelfDocument()
	{
		return shelfDocumentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShelfDocument_Libraries()
	{
		return (EAttribute)shelfDocumentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getShelfDocument_Currency()
	{
		return (EAttribute)shelfDocumentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getShelfDocument_Items()
	{
		return (EReference)shelfDocumentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStockItem()
	{
		return stockItemEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockItem_Id()
	{
		return (EAttribute)stockItemEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockItem_Name()
	{
		return (EAttribute)stockItemEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockItem_Device()
	{
		return (EAttribute)stockItemEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockItem_Equipment()
	{
		return (EAttribute)stockItemEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockItem_Code()
	{
		return (EAttribute)stockItemEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockItem_ParLevel()
	{
		return (EAttribute)stockItemEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockItem_Price()
	{
		return (EAttribute)stockItemEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getStockItem_Lots()
	{
		return (EReference)stockItemEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStockLot()
	{
		return stockLotEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockLot_Lot()
	{
		return (EAttribute)stockLotEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockLot_Expiry()
	{
		return (EAttribute)stockLotEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockLot_Quantity()
	{
		return (EAttribute)stockLotEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockLot_Location()
	{
		return (EAttribute)stockLotEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStockLot_Serial()
	{
		return (EAttribute)stockLotEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSourceKind()
	{
		return sourceKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getDeviceKind()
	{
		return deviceKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getLumenUse()
	{
		return lumenUseEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getLumenOpening()
	{
		return lumenOpeningEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCutterType()
	{
		return cutterTypeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTransducerType()
	{
		return transducerTypeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getClaimType()
	{
		return claimTypeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPhase()
	{
		return phaseEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getBenchOutcome()
	{
		return benchOutcomeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFigureClass()
	{
		return figureClassEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFlowUse()
	{
		return flowUseEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getAllowancePurpose()
	{
		return allowancePurposeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRatioUse()
	{
		return ratioUseEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getGrouping()
	{
		return groupingEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSorting()
	{
		return sortingEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getDirection()
	{
		return directionEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getBendPlace()
	{
		return bendPlaceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPaperSize()
	{
		return paperSizeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getOrientation()
	{
		return orientationEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPrimaryUnit()
	{
		return primaryUnitEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getShownNumbers()
	{
		return shownNumbersEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTechniqueAxis()
	{
		return techniqueAxisEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getHazard()
	{
		return hazardEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRoleTask()
	{
		return roleTaskEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCarrier()
	{
		return carrierEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRoleGoal()
	{
		return roleGoalEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSystemSlot()
	{
		return systemSlotEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getResourceKind()
	{
		return resourceKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getAttemptOutcome()
	{
		return attemptOutcomeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCaseEnd()
	{
		return caseEndEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSex()
	{
		return sexEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getLesionTrait()
	{
		return lesionTraitEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDimension()
	{
		return dimensionEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPressure()
	{
		return pressureEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getOffset()
	{
		return offsetEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ModelFactory getModelFactory()
	{
		return (ModelFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents()
	{
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		extraKeyEClass = createEClass(EXTRA_KEY);
		createEAttribute(extraKeyEClass, EXTRA_KEY__KEY);
		createEAttribute(extraKeyEClass, EXTRA_KEY__JSON);

		elementEClass = createEClass(ELEMENT);
		createEReference(elementEClass, ELEMENT__EXTRAS);

		sourcedEClass = createEClass(SOURCED);
		createEAttribute(sourcedEClass, SOURCED__SOURCE);
		createEAttribute(sourcedEClass, SOURCED__PAGE);
		createEAttribute(sourcedEClass, SOURCED__NOTE);

		documentEClass = createEClass(DOCUMENT);
		createEAttribute(documentEClass, DOCUMENT__FORMAT);
		createEAttribute(documentEClass, DOCUMENT__VERSION);
		createEAttribute(documentEClass, DOCUMENT__TITLE);
		createEAttribute(documentEClass, DOCUMENT__REVISION);
		createEAttribute(documentEClass, DOCUMENT__DATE);
		createEReference(documentEClass, DOCUMENT__SOURCES);

		sourceEClass = createEClass(SOURCE);
		createEAttribute(sourceEClass, SOURCE__ID);
		createEAttribute(sourceEClass, SOURCE__TITLE);
		createEAttribute(sourceEClass, SOURCE__KIND);
		createEAttribute(sourceEClass, SOURCE__REVISION);
		createEAttribute(sourceEClass, SOURCE__DATE);
		createEAttribute(sourceEClass, SOURCE__REVIEWER);
		createEAttribute(sourceEClass, SOURCE__REVIEWED);

		deviceLibraryEClass = createEClass(DEVICE_LIBRARY);
		createEReference(deviceLibraryEClass, DEVICE_LIBRARY__LINES);
		createEReference(deviceLibraryEClass, DEVICE_LIBRARY__DEVICES);
		createEReference(deviceLibraryEClass, DEVICE_LIBRARY__BENCH);

		devicePartsEClass = createEClass(DEVICE_PARTS);
		createEAttribute(devicePartsEClass, DEVICE_PARTS__ID);
		createEAttribute(devicePartsEClass, DEVICE_PARTS__NAME);
		createEAttribute(devicePartsEClass, DEVICE_PARTS__KIND);
		createEAttribute(devicePartsEClass, DEVICE_PARTS__MAKER);
		createEAttribute(devicePartsEClass, DEVICE_PARTS__MODEL);
		createEAttribute(devicePartsEClass, DEVICE_PARTS__SIZE);
		createEAttribute(devicePartsEClass, DEVICE_PARTS__EFFECTIVE_LENGTH);
		createEAttribute(devicePartsEClass, DEVICE_PARTS__TAKES_WIRE);
		createEReference(devicePartsEClass, DEVICE_PARTS__SECTIONS);
		createEReference(devicePartsEClass, DEVICE_PARTS__LUMENS);
		createEReference(devicePartsEClass, DEVICE_PARTS__MARKERS);
		createEReference(devicePartsEClass, DEVICE_PARTS__BALLOON);
		createEReference(devicePartsEClass, DEVICE_PARTS__STENT);
		createEReference(devicePartsEClass, DEVICE_PARTS__CUTTER);
		createEReference(devicePartsEClass, DEVICE_PARTS__TRANSDUCER);
		createEReference(devicePartsEClass, DEVICE_PARTS__WIRE);
		createEReference(devicePartsEClass, DEVICE_PARTS__CLAIMS);

		deviceLineEClass = createEClass(DEVICE_LINE);

		deviceEClass = createEClass(DEVICE);
		createEAttribute(deviceEClass, DEVICE__LINE);

		shaftSectionEClass = createEClass(SHAFT_SECTION);
		createEAttribute(shaftSectionEClass, SHAFT_SECTION__NAME);
		createEAttribute(shaftSectionEClass, SHAFT_SECTION__FROM);
		createEAttribute(shaftSectionEClass, SHAFT_SECTION__TO);
		createEAttribute(shaftSectionEClass, SHAFT_SECTION__OD);
		createEAttribute(shaftSectionEClass, SHAFT_SECTION__OD_PROXIMAL);
		createEAttribute(shaftSectionEClass, SHAFT_SECTION__OD_AFTER);
		createEAttribute(shaftSectionEClass, SHAFT_SECTION__OD_AFTER_PROXIMAL);
		createEReference(shaftSectionEClass, SHAFT_SECTION__OVAL);
		createEReference(shaftSectionEClass, SHAFT_SECTION__DISCS);
		createEAttribute(shaftSectionEClass, SHAFT_SECTION__RIGID);
		createEAttribute(shaftSectionEClass, SHAFT_SECTION__STIFFNESS);

		ovalEClass = createEClass(OVAL);
		createEAttribute(ovalEClass, OVAL__WIDTH);
		createEAttribute(ovalEClass, OVAL__HEIGHT);

		discEClass = createEClass(DISC);
		createEAttribute(discEClass, DISC__X);
		createEAttribute(discEClass, DISC__Y);
		createEAttribute(discEClass, DISC__DIAMETER);

		lumenEClass = createEClass(LUMEN);
		createEAttribute(lumenEClass, LUMEN__NAME);
		createEAttribute(lumenEClass, LUMEN__USE);
		createEAttribute(lumenEClass, LUMEN__DISTAL_AT);
		createEAttribute(lumenEClass, LUMEN__PROXIMAL_AT);
		createEAttribute(lumenEClass, LUMEN__OPENS);
		createEReference(lumenEClass, LUMEN__SECTIONS);

		lumenSectionEClass = createEClass(LUMEN_SECTION);
		createEAttribute(lumenSectionEClass, LUMEN_SECTION__NAME);
		createEAttribute(lumenSectionEClass, LUMEN_SECTION__FROM);
		createEAttribute(lumenSectionEClass, LUMEN_SECTION__TO);
		createEAttribute(lumenSectionEClass, LUMEN_SECTION__ID);
		createEAttribute(lumenSectionEClass, LUMEN_SECTION__ID_DISTAL);

		markerEClass = createEClass(MARKER);
		createEAttribute(markerEClass, MARKER__AT);
		createEAttribute(markerEClass, MARKER__WIDTH);

		balloonEClass = createEClass(BALLOON);
		createEAttribute(balloonEClass, BALLOON__SECTION);
		createEAttribute(balloonEClass, BALLOON__DIAMETER);
		createEAttribute(balloonEClass, BALLOON__LENGTH);
		createEAttribute(balloonEClass, BALLOON__NOMINAL_PRESSURE);
		createEAttribute(balloonEClass, BALLOON__RATED_BURST_PRESSURE);
		createEReference(balloonEClass, BALLOON__COMPLIANCE);

		complianceRowEClass = createEClass(COMPLIANCE_ROW);
		createEAttribute(complianceRowEClass, COMPLIANCE_ROW__PRESSURE);
		createEAttribute(complianceRowEClass, COMPLIANCE_ROW__DIAMETER);

		stentEClass = createEClass(STENT);
		createEAttribute(stentEClass, STENT__SECTION);
		createEAttribute(stentEClass, STENT__DIAMETER);
		createEAttribute(stentEClass, STENT__LENGTH);
		createEAttribute(stentEClass, STENT__MAXIMUM_DIAMETER);
		createEAttribute(stentEClass, STENT__MATERIAL);
		createEAttribute(stentEClass, STENT__STRUT_THICKNESS);

		cutterEClass = createEClass(CUTTER);
		createEAttribute(cutterEClass, CUTTER__SECTION);
		createEAttribute(cutterEClass, CUTTER__TYPE);
		createEAttribute(cutterEClass, CUTTER__DIAMETER);

		transducerEClass = createEClass(TRANSDUCER);
		createEAttribute(transducerEClass, TRANSDUCER__TYPE);
		createEAttribute(transducerEClass, TRANSDUCER__AT);

		wireTraitsEClass = createEClass(WIRE_TRAITS);
		createEAttribute(wireTraitsEClass, WIRE_TRAITS__TIP_LOAD);
		createEAttribute(wireTraitsEClass, WIRE_TRAITS__TIP_SHAPE);
		createEAttribute(wireTraitsEClass, WIRE_TRAITS__EXTENDABLE);
		createEAttribute(wireTraitsEClass, WIRE_TRAITS__COATING);

		claimEClass = createEClass(CLAIM);
		createEAttribute(claimEClass, CLAIM__TYPE);
		createEAttribute(claimEClass, CLAIM__VALUE);
		createEAttribute(claimEClass, CLAIM__KINDS);
		createEAttribute(claimEClass, CLAIM__SIZES);
		createEAttribute(claimEClass, CLAIM__DEVICES);
		createEAttribute(claimEClass, CLAIM__WIRE);
		createEAttribute(claimEClass, CLAIM__ALONE);
		createEAttribute(claimEClass, CLAIM__COVERS);

		benchResultEClass = createEClass(BENCH_RESULT);
		createEAttribute(benchResultEClass, BENCH_RESULT__OUTER);
		createEAttribute(benchResultEClass, BENCH_RESULT__LUMEN);
		createEAttribute(benchResultEClass, BENCH_RESULT__INNER);
		createEAttribute(benchResultEClass, BENCH_RESULT__WIRE);
		createEAttribute(benchResultEClass, BENCH_RESULT__RESULT);
		createEAttribute(benchResultEClass, BENCH_RESULT__COVERS);
		createEAttribute(benchResultEClass, BENCH_RESULT__SAMPLES);

		ruleSetEClass = createEClass(RULE_SET);
		createEReference(ruleSetEClass, RULE_SET__SPANS);
		createEReference(ruleSetEClass, RULE_SET__CLEARANCES);
		createEReference(ruleSetEClass, RULE_SET__AFTER_USE);
		createEReference(ruleSetEClass, RULE_SET__FLOW_LIMITS);
		createEReference(ruleSetEClass, RULE_SET__ALLOWANCES);
		createEReference(ruleSetEClass, RULE_SET__RATIO_BANDS);
		createEReference(ruleSetEClass, RULE_SET__CHANCE_LIMITS);
		createEAttribute(ruleSetEClass, RULE_SET__CONFIDENCE);
		createEAttribute(ruleSetEClass, RULE_SET__COVERAGE);
		createEAttribute(ruleSetEClass, RULE_SET__WIRE_AHEAD);

		spanEClass = createEClass(SPAN);
		createEAttribute(spanEClass, SPAN__FIGURE);
		createEAttribute(spanEClass, SPAN__KINDS);
		createEAttribute(spanEClass, SPAN__BELOW);
		createEAttribute(spanEClass, SPAN__ABOVE);
		createEAttribute(spanEClass, SPAN__RUNS_LOW);

		clearanceRuleEClass = createEClass(CLEARANCE_RULE);
		createEAttribute(clearanceRuleEClass, CLEARANCE_RULE__OUTER);
		createEAttribute(clearanceRuleEClass, CLEARANCE_RULE__INNER);
		createEAttribute(clearanceRuleEClass, CLEARANCE_RULE__REQUIRED);

		afterUseRuleEClass = createEClass(AFTER_USE_RULE);
		createEAttribute(afterUseRuleEClass, AFTER_USE_RULE__KINDS);
		createEAttribute(afterUseRuleEClass, AFTER_USE_RULE__GROWTH_LOW);
		createEAttribute(afterUseRuleEClass, AFTER_USE_RULE__GROWTH_CENTRE);
		createEAttribute(afterUseRuleEClass, AFTER_USE_RULE__GROWTH_HIGH);

		flowLimitEClass = createEClass(FLOW_LIMIT);
		createEAttribute(flowLimitEClass, FLOW_LIMIT__USE);
		createEAttribute(flowLimitEClass, FLOW_LIMIT__LEAST);

		allowanceEClass = createEClass(ALLOWANCE);
		createEAttribute(allowanceEClass, ALLOWANCE__PURPOSE);
		createEAttribute(allowanceEClass, ALLOWANCE__LENGTH);

		ratioBandEClass = createEClass(RATIO_BAND);
		createEAttribute(ratioBandEClass, RATIO_BAND__USE);
		createEAttribute(ratioBandEClass, RATIO_BAND__LOW);
		createEAttribute(ratioBandEClass, RATIO_BAND__HIGH);
		createEAttribute(ratioBandEClass, RATIO_BAND__MEANING);

		chanceLimitEClass = createEClass(CHANCE_LIMIT);
		createEAttribute(chanceLimitEClass, CHANCE_LIMIT__GREATEST);

		fitChartEClass = createEClass(FIT_CHART);
		createEAttribute(fitChartEClass, FIT_CHART__AUDIENCE);
		createEAttribute(fitChartEClass, FIT_CHART__AUTHOR);
		createEAttribute(fitChartEClass, FIT_CHART__LIBRARIES);
		createEAttribute(fitChartEClass, FIT_CHART__RULES);
		createEReference(fitChartEClass, FIT_CHART__OUTER);
		createEReference(fitChartEClass, FIT_CHART__INNER);
		createEReference(fitChartEClass, FIT_CHART__CONDITIONS);
		createEReference(fitChartEClass, FIT_CHART__PATH);
		createEReference(fitChartEClass, FIT_CHART__LESION);
		createEReference(fitChartEClass, FIT_CHART__PAPER);
		createEAttribute(fitChartEClass, FIT_CHART__FOOTNOTES);
		createEReference(fitChartEClass, FIT_CHART__SIGN_OFF);

		signOffEClass = createEClass(SIGN_OFF);
		createEAttribute(signOffEClass, SIGN_OFF__BY);
		createEAttribute(signOffEClass, SIGN_OFF__DATE);
		createEAttribute(signOffEClass, SIGN_OFF__RULE_SET);
		createEAttribute(signOffEClass, SIGN_OFF__ASKED);
		createEReference(signOffEClass, SIGN_OFF__DOCUMENTS);
		createEAttribute(signOffEClass, SIGN_OFF__INNER);
		createEReference(signOffEClass, SIGN_OFF__ROWS);

		signedRowEClass = createEClass(SIGNED_ROW);
		createEAttribute(signedRowEClass, SIGNED_ROW__OUTER);
		createEAttribute(signedRowEClass, SIGNED_ROW__IN);
		createEAttribute(signedRowEClass, SIGNED_ROW__OUT);

		axisEClass = createEClass(AXIS);
		createEAttribute(axisEClass, AXIS__KINDS);
		createEAttribute(axisEClass, AXIS__DEVICES);
		createEAttribute(axisEClass, AXIS__HIDDEN);
		createEAttribute(axisEClass, AXIS__GROUP_BY);
		createEAttribute(axisEClass, AXIS__SORT_BY);

		conditionsEClass = createEClass(CONDITIONS);
		createEAttribute(conditionsEClass, CONDITIONS__DIRECTION);
		createEAttribute(conditionsEClass, CONDITIONS__WIRE);
		createEAttribute(conditionsEClass, CONDITIONS__REACH);
		createEReference(conditionsEClass, CONDITIONS__INSIDE);
		createEReference(conditionsEClass, CONDITIONS__THROUGH);
		createEReference(conditionsEClass, CONDITIONS__BENDS);
		createEAttribute(conditionsEClass, CONDITIONS__AFTER_INFLATION);

		occupantEClass = createEClass(OCCUPANT);
		createEAttribute(occupantEClass, OCCUPANT__DEVICE);
		createEAttribute(occupantEClass, OCCUPANT__WIRE);
		createEAttribute(occupantEClass, OCCUPANT__TIP_AHEAD);
		createEAttribute(occupantEClass, OCCUPANT__USED);

		throughExtensionEClass = createEClass(THROUGH_EXTENSION);
		createEAttribute(throughExtensionEClass, THROUGH_EXTENSION__EXTENSION);
		createEAttribute(throughExtensionEClass, THROUGH_EXTENSION__PROTRUSION);

		bendEClass = createEClass(BEND);
		createEAttribute(bendEClass, BEND__WHERE);
		createEAttribute(bendEClass, BEND__RADIUS);
		createEAttribute(bendEClass, BEND__ANGLE_DEGREES);
		createEAttribute(bendEClass, BEND__VESSEL_DIAMETER);

		vesselPathEClass = createEClass(VESSEL_PATH);
		createEAttribute(vesselPathEClass, VESSEL_PATH__NAME);
		createEReference(vesselPathEClass, VESSEL_PATH__SEGMENTS);

		vesselSegmentEClass = createEClass(VESSEL_SEGMENT);
		createEAttribute(vesselSegmentEClass, VESSEL_SEGMENT__NAME);
		createEAttribute(vesselSegmentEClass, VESSEL_SEGMENT__LENGTH);
		createEAttribute(vesselSegmentEClass, VESSEL_SEGMENT__DIAMETER);
		createEAttribute(vesselSegmentEClass, VESSEL_SEGMENT__BEND_RADIUS);
		createEAttribute(vesselSegmentEClass, VESSEL_SEGMENT__BEND_ANGLE_DEGREES);

		lesionEClass = createEClass(LESION);
		createEAttribute(lesionEClass, LESION__NAME);
		createEAttribute(lesionEClass, LESION__AT);
		createEAttribute(lesionEClass, LESION__LENGTH);
		createEAttribute(lesionEClass, LESION__DIAMETER);
		createEAttribute(lesionEClass, LESION__REFERENCE);

		paperEClass = createEClass(PAPER);
		createEAttribute(paperEClass, PAPER__SIZE);
		createEAttribute(paperEClass, PAPER__ORIENTATION);
		createEAttribute(paperEClass, PAPER__PRIMARY_UNIT);
		createEAttribute(paperEClass, PAPER__SHOW_NUMBERS);

		techniqueLibraryEClass = createEClass(TECHNIQUE_LIBRARY);
		createEAttribute(techniqueLibraryEClass, TECHNIQUE_LIBRARY__SITUATION);
		createEReference(techniqueLibraryEClass, TECHNIQUE_LIBRARY__FACTS);
		createEReference(techniqueLibraryEClass, TECHNIQUE_LIBRARY__SETUPS);
		createEReference(techniqueLibraryEClass, TECHNIQUE_LIBRARY__TECHNIQUES);
		createEReference(techniqueLibraryEClass, TECHNIQUE_LIBRARY__BAIL_OUT);
		createEReference(techniqueLibraryEClass, TECHNIQUE_LIBRARY__STOP_RULES);

		factEClass = createEClass(FACT);
		createEAttribute(factEClass, FACT__ID);
		createEAttribute(factEClass, FACT__WORDS);

		moveEClass = createEClass(MOVE);
		createEAttribute(moveEClass, MOVE__ID);
		createEAttribute(moveEClass, MOVE__NAME);
		createEAttribute(moveEClass, MOVE__HAZARD);
		createEReference(moveEClass, MOVE__ROLES);
		createEReference(moveEClass, MOVE__NEEDS);
		createEAttribute(moveEClass, MOVE__SETUPS);

		costedEClass = createEClass(COSTED);
		createEAttribute(costedEClass, COSTED__MINUTES);
		createEAttribute(costedEClass, COSTED__CONTRAST_ML);
		createEAttribute(costedEClass, COSTED__DOSE_MGY);
		createEAttribute(costedEClass, COSTED__MONEY);

		advisedEClass = createEClass(ADVISED);
		createEAttribute(advisedEClass, ADVISED__CHANGES);
		createEAttribute(advisedEClass, ADVISED__CAUTIONS);
		createEAttribute(advisedEClass, ADVISED__OFF_LABEL);
		createEAttribute(advisedEClass, ADVISED__STOP);
		createEReference(advisedEClass, ADVISED__PUBLISHED);

		setupEClass = createEClass(SETUP);
		createEReference(setupEClass, SETUP__LEAVES);
		createEAttribute(setupEClass, SETUP__EXCHANGES_WIRE);

		techniqueEClass = createEClass(TECHNIQUE);
		createEAttribute(techniqueEClass, TECHNIQUE__AXIS);
		createEAttribute(techniqueEClass, TECHNIQUE__AFTER);
		createEReference(techniqueEClass, TECHNIQUE__TRIES);

		roleEClass = createEClass(ROLE);
		createEAttribute(roleEClass, ROLE__ID);
		createEAttribute(roleEClass, ROLE__NAME);
		createEAttribute(roleEClass, ROLE__KINDS);
		createEAttribute(roleEClass, ROLE__DEVICES);
		createEAttribute(roleEClass, ROLE__EQUIPMENT);
		createEAttribute(roleEClass, ROLE__NOMINAL_DIAMETER);
		createEAttribute(roleEClass, ROLE__NOMINAL_LENGTH);
		createEAttribute(roleEClass, ROLE__WIRE);
		createEAttribute(roleEClass, ROLE__TO_VESSEL_FROM);
		createEAttribute(roleEClass, ROLE__TO_VESSEL_TO);
		createEAttribute(roleEClass, ROLE__TASK);
		createEAttribute(roleEClass, ROLE__CARRIER);
		createEAttribute(roleEClass, ROLE__GOAL);
		createEAttribute(roleEClass, ROLE__COUNT);
		createEAttribute(roleEClass, ROLE__ONLY_IF_WIRE_IS_SHORT);

		needEClass = createEClass(NEED);
		createEAttribute(needEClass, NEED__FACT);
		createEAttribute(needEClass, NEED__VESSEL);
		createEAttribute(needEClass, NEED__BRANCH);

		placementEClass = createEClass(PLACEMENT);
		createEAttribute(placementEClass, PLACEMENT__SLOT);
		createEAttribute(placementEClass, PLACEMENT__ROLE);
		createEAttribute(placementEClass, PLACEMENT__PROTRUSION);

		plannedTryEClass = createEClass(PLANNED_TRY);
		createEAttribute(plannedTryEClass, PLANNED_TRY__SUCCESSES);
		createEAttribute(plannedTryEClass, PLANNED_TRY__FAILURES);
		createEReference(plannedTryEClass, PLANNED_TRY__PRIOR);

		priorEClass = createEClass(PRIOR);
		createEAttribute(priorEClass, PRIOR__SUCCESSES);
		createEAttribute(priorEClass, PRIOR__FAILURES);
		createEAttribute(priorEClass, PRIOR__LABEL);

		publishedEClass = createEClass(PUBLISHED);
		createEAttribute(publishedEClass, PUBLISHED__TEXT);

		stopRuleEClass = createEClass(STOP_RULE);
		createEAttribute(stopRuleEClass, STOP_RULE__ID);
		createEAttribute(stopRuleEClass, STOP_RULE__WORDS);
		createEAttribute(stopRuleEClass, STOP_RULE__RESOURCE);
		createEAttribute(stopRuleEClass, STOP_RULE__LIMIT);

		caseDocumentEClass = createEClass(CASE_DOCUMENT);
		createEAttribute(caseDocumentEClass, CASE_DOCUMENT__LIBRARIES);
		createEAttribute(caseDocumentEClass, CASE_DOCUMENT__RULES);
		createEAttribute(caseDocumentEClass, CASE_DOCUMENT__TECHNIQUES);
		createEAttribute(caseDocumentEClass, CASE_DOCUMENT__SHELF);
		createEAttribute(caseDocumentEClass, CASE_DOCUMENT__DAY);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__ACCESS);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__SYSTEM);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__PATH);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__LESION);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__BRANCH);
		createEAttribute(caseDocumentEClass, CASE_DOCUMENT__DELIVER);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__FACTS);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__MEASURES);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__PATIENT);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__AIM);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__SPENT);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__LOG);
		createEReference(caseDocumentEClass, CASE_DOCUMENT__CLOSING);

		accessEClass = createEClass(ACCESS);
		createEAttribute(accessEClass, ACCESS__SITE);
		createEAttribute(accessEClass, ACCESS__VESSEL);

		systemInPlaceEClass = createEClass(SYSTEM_IN_PLACE);
		createEAttribute(systemInPlaceEClass, SYSTEM_IN_PLACE__SHEATH);
		createEAttribute(systemInPlaceEClass, SYSTEM_IN_PLACE__VALVE);
		createEAttribute(systemInPlaceEClass, SYSTEM_IN_PLACE__GUIDE);
		createEReference(systemInPlaceEClass, SYSTEM_IN_PLACE__EXTENSION);
		createEAttribute(systemInPlaceEClass, SYSTEM_IN_PLACE__MICROCATHETER);
		createEAttribute(systemInPlaceEClass, SYSTEM_IN_PLACE__MAIN_WIRE);
		createEAttribute(systemInPlaceEClass, SYSTEM_IN_PLACE__SECOND_WIRE);
		createEAttribute(systemInPlaceEClass, SYSTEM_IN_PLACE__ANCHOR);

		sideBranchEClass = createEClass(SIDE_BRANCH);
		createEAttribute(sideBranchEClass, SIDE_BRANCH__NAME);
		createEAttribute(sideBranchEClass, SIDE_BRANCH__AT);
		createEAttribute(sideBranchEClass, SIDE_BRANCH__DIAMETER);
		createEAttribute(sideBranchEClass, SIDE_BRANCH__DEPTH);

		statedFactEClass = createEClass(STATED_FACT);
		createEAttribute(statedFactEClass, STATED_FACT__FACT);
		createEAttribute(statedFactEClass, STATED_FACT__HOLDS);

		lesionMeasuresEClass = createEClass(LESION_MEASURES);
		createEAttribute(lesionMeasuresEClass, LESION_MEASURES__BLUNT_STUMP);
		createEAttribute(lesionMeasuresEClass, LESION_MEASURES__CALCIFICATION);
		createEAttribute(lesionMeasuresEClass, LESION_MEASURES__BEND_DEGREES);
		createEAttribute(lesionMeasuresEClass, LESION_MEASURES__FAILED_BEFORE);
		createEAttribute(lesionMeasuresEClass, LESION_MEASURES__OCCLUSION_MONTHS);
		createEAttribute(lesionMeasuresEClass, LESION_MEASURES__CALCIUM_DEGREES);
		createEAttribute(lesionMeasuresEClass, LESION_MEASURES__CALCIUM_THICKNESS);
		createEAttribute(lesionMeasuresEClass, LESION_MEASURES__CALCIUM_LENGTH);
		createEAttribute(lesionMeasuresEClass, LESION_MEASURES__TRAITS);

		patientFiguresEClass = createEClass(PATIENT_FIGURES);
		createEAttribute(patientFiguresEClass, PATIENT_FIGURES__AGE);
		createEAttribute(patientFiguresEClass, PATIENT_FIGURES__WEIGHT);
		createEAttribute(patientFiguresEClass, PATIENT_FIGURES__CREATININE);
		createEAttribute(patientFiguresEClass, PATIENT_FIGURES__SEX);

		caseAimEClass = createEClass(CASE_AIM);
		createEAttribute(caseAimEClass, CASE_AIM__OBJECTIVE);
		createEAttribute(caseAimEClass, CASE_AIM__STOPPING_COST);
		createEAttribute(caseAimEClass, CASE_AIM__TIERS_FIRST);
		createEAttribute(caseAimEClass, CASE_AIM__ONE_NEW_RISK_ASTEP);
		createEAttribute(caseAimEClass, CASE_AIM__SAME_AXIS_DISCOUNT);
		createEAttribute(caseAimEClass, CASE_AIM__BUDGETS_LIMIT);
		createEReference(caseAimEClass, CASE_AIM__BUDGETS);

		costsEClass = createEClass(COSTS);

		loggedAttemptEClass = createEClass(LOGGED_ATTEMPT);
		createEAttribute(loggedAttemptEClass, LOGGED_ATTEMPT__MOVE);
		createEAttribute(loggedAttemptEClass, LOGGED_ATTEMPT__OUTCOME);
		createEReference(loggedAttemptEClass, LOGGED_ATTEMPT__UNITS);
		createEAttribute(loggedAttemptEClass, LOGGED_ATTEMPT__REMARK);

		usedUnitEClass = createEClass(USED_UNIT);
		createEAttribute(usedUnitEClass, USED_UNIT__ROLE);
		createEAttribute(usedUnitEClass, USED_UNIT__ITEM);
		createEAttribute(usedUnitEClass, USED_UNIT__LOT);

		closingEClass = createEClass(CLOSING);
		createEAttribute(closingEClass, CLOSING__CLOSED);
		createEAttribute(closingEClass, CLOSING__ENDED);
		createEReference(closingEClass, CLOSING__PLAN);
		createEReference(closingEClass, CLOSING__DEVICES);
		createEReference(closingEClass, CLOSING__HASHES);

		closedStepEClass = createEClass(CLOSED_STEP);
		createEAttribute(closedStepEClass, CLOSED_STEP__MOVE);
		createEAttribute(closedStepEClass, CLOSED_STEP__NAME);
		createEAttribute(closedStepEClass, CLOSED_STEP__DEVICES);

		closedDeviceEClass = createEClass(CLOSED_DEVICE);
		createEAttribute(closedDeviceEClass, CLOSED_DEVICE__ID);
		createEAttribute(closedDeviceEClass, CLOSED_DEVICE__ITEM);
		createEAttribute(closedDeviceEClass, CLOSED_DEVICE__LOT);
		createEAttribute(closedDeviceEClass, CLOSED_DEVICE__EXPIRY);

		documentHashEClass = createEClass(DOCUMENT_HASH);
		createEAttribute(documentHashEClass, DOCUMENT_HASH__FILE);
		createEAttribute(documentHashEClass, DOCUMENT_HASH__REVISION);
		createEAttribute(documentHashEClass, DOCUMENT_HASH__SHA256);

		shelfDocumentEClass = createEClass(SHELF_DOCUMENT);
		createEAttribute(shelfDocumentEClass, SHELF_DOCUMENT__LIBRARIES);
		createEAttribute(shelfDocumentEClass, SHELF_DOCUMENT__CURRENCY);
		createEReference(shelfDocumentEClass, SHELF_DOCUMENT__ITEMS);

		stockItemEClass = createEClass(STOCK_ITEM);
		createEAttribute(stockItemEClass, STOCK_ITEM__ID);
		createEAttribute(stockItemEClass, STOCK_ITEM__NAME);
		createEAttribute(stockItemEClass, STOCK_ITEM__DEVICE);
		createEAttribute(stockItemEClass, STOCK_ITEM__EQUIPMENT);
		createEAttribute(stockItemEClass, STOCK_ITEM__CODE);
		createEAttribute(stockItemEClass, STOCK_ITEM__PAR_LEVEL);
		createEAttribute(stockItemEClass, STOCK_ITEM__PRICE);
		createEReference(stockItemEClass, STOCK_ITEM__LOTS);

		stockLotEClass = createEClass(STOCK_LOT);
		createEAttribute(stockLotEClass, STOCK_LOT__LOT);
		createEAttribute(stockLotEClass, STOCK_LOT__EXPIRY);
		createEAttribute(stockLotEClass, STOCK_LOT__QUANTITY);
		createEAttribute(stockLotEClass, STOCK_LOT__LOCATION);
		createEAttribute(stockLotEClass, STOCK_LOT__SERIAL);

		// Create enums
		sourceKindEEnum = createEEnum(SOURCE_KIND);
		deviceKindEEnum = createEEnum(DEVICE_KIND);
		lumenUseEEnum = createEEnum(LUMEN_USE);
		lumenOpeningEEnum = createEEnum(LUMEN_OPENING);
		cutterTypeEEnum = createEEnum(CUTTER_TYPE);
		transducerTypeEEnum = createEEnum(TRANSDUCER_TYPE);
		claimTypeEEnum = createEEnum(CLAIM_TYPE);
		phaseEEnum = createEEnum(PHASE);
		benchOutcomeEEnum = createEEnum(BENCH_OUTCOME);
		figureClassEEnum = createEEnum(FIGURE_CLASS);
		flowUseEEnum = createEEnum(FLOW_USE);
		allowancePurposeEEnum = createEEnum(ALLOWANCE_PURPOSE);
		ratioUseEEnum = createEEnum(RATIO_USE);
		groupingEEnum = createEEnum(GROUPING);
		sortingEEnum = createEEnum(SORTING);
		directionEEnum = createEEnum(DIRECTION);
		bendPlaceEEnum = createEEnum(BEND_PLACE);
		paperSizeEEnum = createEEnum(PAPER_SIZE);
		orientationEEnum = createEEnum(ORIENTATION);
		primaryUnitEEnum = createEEnum(PRIMARY_UNIT);
		shownNumbersEEnum = createEEnum(SHOWN_NUMBERS);
		techniqueAxisEEnum = createEEnum(TECHNIQUE_AXIS);
		hazardEEnum = createEEnum(HAZARD);
		roleTaskEEnum = createEEnum(ROLE_TASK);
		carrierEEnum = createEEnum(CARRIER);
		roleGoalEEnum = createEEnum(ROLE_GOAL);
		systemSlotEEnum = createEEnum(SYSTEM_SLOT);
		resourceKindEEnum = createEEnum(RESOURCE_KIND);
		attemptOutcomeEEnum = createEEnum(ATTEMPT_OUTCOME);
		caseEndEEnum = createEEnum(CASE_END);
		sexEEnum = createEEnum(SEX);
		lesionTraitEEnum = createEEnum(LESION_TRAIT);

		// Create data types
		dimensionEDataType = createEDataType(DIMENSION);
		pressureEDataType = createEDataType(PRESSURE);
		offsetEDataType = createEDataType(OFFSET);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents()
	{
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		sourcedEClass.getESuperTypes().add(this.getElement());
		documentEClass.getESuperTypes().add(this.getElement());
		sourceEClass.getESuperTypes().add(this.getElement());
		deviceLibraryEClass.getESuperTypes().add(this.getDocument());
		devicePartsEClass.getESuperTypes().add(this.getSourced());
		deviceLineEClass.getESuperTypes().add(this.getDeviceParts());
		deviceEClass.getESuperTypes().add(this.getDeviceParts());
		shaftSectionEClass.getESuperTypes().add(this.getSourced());
		ovalEClass.getESuperTypes().add(this.getElement());
		discEClass.getESuperTypes().add(this.getElement());
		lumenEClass.getESuperTypes().add(this.getSourced());
		lumenSectionEClass.getESuperTypes().add(this.getSourced());
		markerEClass.getESuperTypes().add(this.getSourced());
		balloonEClass.getESuperTypes().add(this.getSourced());
		complianceRowEClass.getESuperTypes().add(this.getElement());
		stentEClass.getESuperTypes().add(this.getSourced());
		cutterEClass.getESuperTypes().add(this.getSourced());
		transducerEClass.getESuperTypes().add(this.getSourced());
		wireTraitsEClass.getESuperTypes().add(this.getSourced());
		claimEClass.getESuperTypes().add(this.getSourced());
		benchResultEClass.getESuperTypes().add(this.getSourced());
		ruleSetEClass.getESuperTypes().add(this.getDocument());
		spanEClass.getESuperTypes().add(this.getSourced());
		clearanceRuleEClass.getESuperTypes().add(this.getSourced());
		afterUseRuleEClass.getESuperTypes().add(this.getSourced());
		flowLimitEClass.getESuperTypes().add(this.getSourced());
		allowanceEClass.getESuperTypes().add(this.getSourced());
		ratioBandEClass.getESuperTypes().add(this.getSourced());
		chanceLimitEClass.getESuperTypes().add(this.getSourced());
		fitChartEClass.getESuperTypes().add(this.getDocument());
		signOffEClass.getESuperTypes().add(this.getElement());
		signedRowEClass.getESuperTypes().add(this.getElement());
		axisEClass.getESuperTypes().add(this.getElement());
		conditionsEClass.getESuperTypes().add(this.getElement());
		occupantEClass.getESuperTypes().add(this.getElement());
		throughExtensionEClass.getESuperTypes().add(this.getElement());
		bendEClass.getESuperTypes().add(this.getElement());
		vesselPathEClass.getESuperTypes().add(this.getSourced());
		vesselSegmentEClass.getESuperTypes().add(this.getElement());
		lesionEClass.getESuperTypes().add(this.getSourced());
		paperEClass.getESuperTypes().add(this.getElement());
		techniqueLibraryEClass.getESuperTypes().add(this.getDocument());
		factEClass.getESuperTypes().add(this.getElement());
		moveEClass.getESuperTypes().add(this.getSourced());
		costedEClass.getESuperTypes().add(this.getElement());
		advisedEClass.getESuperTypes().add(this.getSourced());
		setupEClass.getESuperTypes().add(this.getMove());
		setupEClass.getESuperTypes().add(this.getCosted());
		setupEClass.getESuperTypes().add(this.getAdvised());
		techniqueEClass.getESuperTypes().add(this.getMove());
		techniqueEClass.getESuperTypes().add(this.getAdvised());
		roleEClass.getESuperTypes().add(this.getSourced());
		needEClass.getESuperTypes().add(this.getElement());
		placementEClass.getESuperTypes().add(this.getElement());
		plannedTryEClass.getESuperTypes().add(this.getCosted());
		plannedTryEClass.getESuperTypes().add(this.getSourced());
		priorEClass.getESuperTypes().add(this.getElement());
		publishedEClass.getESuperTypes().add(this.getSourced());
		stopRuleEClass.getESuperTypes().add(this.getSourced());
		caseDocumentEClass.getESuperTypes().add(this.getDocument());
		accessEClass.getESuperTypes().add(this.getSourced());
		systemInPlaceEClass.getESuperTypes().add(this.getElement());
		sideBranchEClass.getESuperTypes().add(this.getSourced());
		statedFactEClass.getESuperTypes().add(this.getElement());
		lesionMeasuresEClass.getESuperTypes().add(this.getSourced());
		patientFiguresEClass.getESuperTypes().add(this.getElement());
		caseAimEClass.getESuperTypes().add(this.getElement());
		costsEClass.getESuperTypes().add(this.getCosted());
		loggedAttemptEClass.getESuperTypes().add(this.getCosted());
		usedUnitEClass.getESuperTypes().add(this.getElement());
		closingEClass.getESuperTypes().add(this.getElement());
		closedStepEClass.getESuperTypes().add(this.getElement());
		closedDeviceEClass.getESuperTypes().add(this.getElement());
		documentHashEClass.getESuperTypes().add(this.getElement());
		shelfDocumentEClass.getESuperTypes().add(this.getDocument());
		stockItemEClass.getESuperTypes().add(this.getSourced());
		stockLotEClass.getESuperTypes().add(this.getElement());

		// Initialize classes and features; add operations and parameters
		initEClass(extraKeyEClass, ExtraKey.class, "ExtraKey", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getExtraKey_Key(), ecorePackage.getEString(), "key", null, 1, 1, ExtraKey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExtraKey_Json(), ecorePackage.getEString(), "json", null, 1, 1, ExtraKey.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(elementEClass, Element.class, "Element", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getElement_Extras(), this.getExtraKey(), null, "extras", null, 0, -1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sourcedEClass, Sourced.class, "Sourced", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSourced_Source(), ecorePackage.getEString(), "source", null, 0, 1, Sourced.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSourced_Page(), ecorePackage.getEString(), "page", null, 0, 1, Sourced.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSourced_Note(), ecorePackage.getEString(), "note", null, 0, 1, Sourced.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(documentEClass, Document.class, "Document", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDocument_Format(), ecorePackage.getEString(), "format", null, 1, 1, Document.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDocument_Version(), ecorePackage.getEInt(), "version", "1", 1, 1, Document.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDocument_Title(), ecorePackage.getEString(), "title", null, 0, 1, Document.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDocument_Revision(), ecorePackage.getEString(), "revision", null, 0, 1, Document.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDocument_Date(), ecorePackage.getEString(), "date", null, 0, 1, Document.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDocument_Sources(), this.getSource(), null, "sources", null, 0, -1, Document.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sourceEClass, Source.class, "Source", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSource_Id(), ecorePackage.getEString(), "id", null, 1, 1, Source.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSource_Title(), ecorePackage.getEString(), "title", null, 0, 1, Source.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSource_Kind(), this.getSourceKind(), "kind", "fromMemory", 0, 1, Source.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSource_Revision(), ecorePackage.getEString(), "revision", null, 0, 1, Source.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSource_Date(), ecorePackage.getEString(), "date", null, 0, 1, Source.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSource_Reviewer(), ecorePackage.getEString(), "reviewer", null, 0, 1, Source.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSource_Reviewed(), ecorePackage.getEString(), "reviewed", null, 0, 1, Source.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(deviceLibraryEClass, DeviceLibrary.class, "DeviceLibrary", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getDeviceLibrary_Lines(), this.getDeviceLine(), null, "lines", null, 0, -1, DeviceLibrary.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDeviceLibrary_Devices(), this.getDevice(), null, "devices", null, 0, -1, DeviceLibrary.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDeviceLibrary_Bench(), this.getBenchResult(), null, "bench", null, 0, -1, DeviceLibrary.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(devicePartsEClass, DeviceParts.class, "DeviceParts", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDeviceParts_Id(), ecorePackage.getEString(), "id", null, 1, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDeviceParts_Name(), ecorePackage.getEString(), "name", null, 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDeviceParts_Kind(), this.getDeviceKind(), "kind", "other", 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDeviceParts_Maker(), ecorePackage.getEString(), "maker", null, 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDeviceParts_Model(), ecorePackage.getEString(), "model", null, 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDeviceParts_Size(), ecorePackage.getEString(), "size", null, 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDeviceParts_EffectiveLength(), this.getDimension(), "effectiveLength", null, 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDeviceParts_TakesWire(), this.getDimension(), "takesWire", null, 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDeviceParts_Sections(), this.getShaftSection(), null, "sections", null, 0, -1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDeviceParts_Lumens(), this.getLumen(), null, "lumens", null, 0, -1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDeviceParts_Markers(), this.getMarker(), null, "markers", null, 0, -1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDeviceParts_Balloon(), this.getBalloon(), null, "balloon", null, 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDeviceParts_Stent(), this.getStent(), null, "stent", null, 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDeviceParts_Cutter(), this.getCutter(), null, "cutter", null, 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDeviceParts_Transducer(), this.getTransducer(), null, "transducer", null, 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDeviceParts_Wire(), this.getWireTraits(), null, "wire", null, 0, 1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getDeviceParts_Claims(), this.getClaim(), null, "claims", null, 0, -1, DeviceParts.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(deviceLineEClass, DeviceLine.class, "DeviceLine", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(deviceEClass, Device.class, "Device", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDevice_Line(), ecorePackage.getEString(), "line", null, 0, 1, Device.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(shaftSectionEClass, ShaftSection.class, "ShaftSection", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getShaftSection_Name(), ecorePackage.getEString(), "name", null, 0, 1, ShaftSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShaftSection_From(), this.getDimension(), "from", null, 0, 1, ShaftSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShaftSection_To(), this.getDimension(), "to", null, 0, 1, ShaftSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShaftSection_Od(), this.getDimension(), "od", null, 0, 1, ShaftSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShaftSection_OdProximal(), this.getDimension(), "odProximal", null, 0, 1, ShaftSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShaftSection_OdAfter(), this.getDimension(), "odAfter", null, 0, 1, ShaftSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShaftSection_OdAfterProximal(), this.getDimension(), "odAfterProximal", null, 0, 1, ShaftSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getShaftSection_Oval(), this.getOval(), null, "oval", null, 0, 1, ShaftSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getShaftSection_Discs(), this.getDisc(), null, "discs", null, 0, -1, ShaftSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShaftSection_Rigid(), ecorePackage.getEBoolean(), "rigid", null, 0, 1, ShaftSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShaftSection_Stiffness(), ecorePackage.getEString(), "stiffness", null, 0, 1, ShaftSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(ovalEClass, Oval.class, "Oval", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getOval_Width(), this.getDimension(), "width", null, 1, 1, Oval.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOval_Height(), this.getDimension(), "height", null, 1, 1, Oval.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(discEClass, Disc.class, "Disc", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDisc_X(), this.getOffset(), "x", null, 1, 1, Disc.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDisc_Y(), this.getOffset(), "y", null, 1, 1, Disc.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDisc_Diameter(), this.getDimension(), "diameter", null, 1, 1, Disc.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(lumenEClass, Lumen.class, "Lumen", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLumen_Name(), ecorePackage.getEString(), "name", null, 0, 1, Lumen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLumen_Use(), this.getLumenUse(), "use", "working", 0, 1, Lumen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLumen_DistalAt(), this.getDimension(), "distalAt", null, 0, 1, Lumen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLumen_ProximalAt(), this.getDimension(), "proximalAt", null, 0, 1, Lumen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLumen_Opens(), this.getLumenOpening(), "opens", "hub", 0, 1, Lumen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getLumen_Sections(), this.getLumenSection(), null, "sections", null, 0, -1, Lumen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(lumenSectionEClass, LumenSection.class, "LumenSection", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLumenSection_Name(), ecorePackage.getEString(), "name", null, 0, 1, LumenSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLumenSection_From(), this.getDimension(), "from", null, 0, 1, LumenSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLumenSection_To(), this.getDimension(), "to", null, 0, 1, LumenSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLumenSection_Id(), this.getDimension(), "id", null, 0, 1, LumenSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLumenSection_IdDistal(), this.getDimension(), "idDistal", null, 0, 1, LumenSection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(markerEClass, Marker.class, "Marker", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMarker_At(), this.getDimension(), "at", null, 0, 1, Marker.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMarker_Width(), this.getDimension(), "width", null, 0, 1, Marker.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(balloonEClass, Balloon.class, "Balloon", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBalloon_Section(), ecorePackage.getEString(), "section", null, 0, 1, Balloon.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBalloon_Diameter(), this.getDimension(), "diameter", null, 0, 1, Balloon.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBalloon_Length(), this.getDimension(), "length", null, 0, 1, Balloon.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBalloon_NominalPressure(), this.getPressure(), "nominalPressure", null, 0, 1, Balloon.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBalloon_RatedBurstPressure(), this.getPressure(), "ratedBurstPressure", null, 0, 1, Balloon.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getBalloon_Compliance(), this.getComplianceRow(), null, "compliance", null, 0, -1, Balloon.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(complianceRowEClass, ComplianceRow.class, "ComplianceRow", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getComplianceRow_Pressure(), this.getPressure(), "pressure", null, 1, 1, ComplianceRow.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getComplianceRow_Diameter(), this.getDimension(), "diameter", null, 1, 1, ComplianceRow.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stentEClass, Stent.class, "Stent", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStent_Section(), ecorePackage.getEString(), "section", null, 0, 1, Stent.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStent_Diameter(), this.getDimension(), "diameter", null, 0, 1, Stent.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStent_Length(), this.getDimension(), "length", null, 0, 1, Stent.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStent_MaximumDiameter(), this.getDimension(), "maximumDiameter", null, 0, 1, Stent.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStent_Material(), ecorePackage.getEString(), "material", null, 0, 1, Stent.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStent_StrutThickness(), this.getDimension(), "strutThickness", null, 0, 1, Stent.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(cutterEClass, Cutter.class, "Cutter", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCutter_Section(), ecorePackage.getEString(), "section", null, 0, 1, Cutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCutter_Type(), this.getCutterType(), "type", null, 1, 1, Cutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCutter_Diameter(), this.getDimension(), "diameter", null, 0, 1, Cutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(transducerEClass, Transducer.class, "Transducer", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTransducer_Type(), this.getTransducerType(), "type", null, 1, 1, Transducer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTransducer_At(), this.getDimension(), "at", null, 0, 1, Transducer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(wireTraitsEClass, WireTraits.class, "WireTraits", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWireTraits_TipLoad(), ecorePackage.getEString(), "tipLoad", null, 0, 1, WireTraits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWireTraits_TipShape(), ecorePackage.getEString(), "tipShape", null, 0, 1, WireTraits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWireTraits_Extendable(), ecorePackage.getEBoolean(), "extendable", null, 0, 1, WireTraits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWireTraits_Coating(), ecorePackage.getEString(), "coating", null, 0, 1, WireTraits.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(claimEClass, Claim.class, "Claim", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getClaim_Type(), this.getClaimType(), "type", null, 1, 1, Claim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClaim_Value(), this.getDimension(), "value", null, 0, 1, Claim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClaim_Kinds(), this.getDeviceKind(), "kinds", null, 0, -1, Claim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClaim_Sizes(), ecorePackage.getEString(), "sizes", null, 0, -1, Claim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClaim_Devices(), ecorePackage.getEString(), "devices", null, 0, -1, Claim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClaim_Wire(), this.getDimension(), "wire", null, 0, 1, Claim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClaim_Alone(), ecorePackage.getEBoolean(), "alone", "true", 0, 1, Claim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClaim_Covers(), this.getPhase(), "covers", null, 0, -1, Claim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(benchResultEClass, BenchResult.class, "BenchResult", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBenchResult_Outer(), ecorePackage.getEString(), "outer", null, 1, 1, BenchResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBenchResult_Lumen(), ecorePackage.getEString(), "lumen", null, 0, 1, BenchResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBenchResult_Inner(), ecorePackage.getEString(), "inner", null, 1, 1, BenchResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBenchResult_Wire(), ecorePackage.getEString(), "wire", null, 0, 1, BenchResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBenchResult_Result(), this.getBenchOutcome(), "result", null, 1, 1, BenchResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBenchResult_Covers(), this.getPhase(), "covers", null, 0, -1, BenchResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBenchResult_Samples(), ecorePackage.getEIntegerObject(), "samples", null, 0, 1, BenchResult.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(ruleSetEClass, RuleSet.class, "RuleSet", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getRuleSet_Spans(), this.getSpan(), null, "spans", null, 0, -1, RuleSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRuleSet_Clearances(), this.getClearanceRule(), null, "clearances", null, 0, -1, RuleSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRuleSet_AfterUse(), this.getAfterUseRule(), null, "afterUse", null, 0, -1, RuleSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRuleSet_FlowLimits(), this.getFlowLimit(), null, "flowLimits", null, 0, -1, RuleSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRuleSet_Allowances(), this.getAllowance(), null, "allowances", null, 0, -1, RuleSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRuleSet_RatioBands(), this.getRatioBand(), null, "ratioBands", null, 0, -1, RuleSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRuleSet_ChanceLimits(), this.getChanceLimit(), null, "chanceLimits", null, 0, -1, RuleSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRuleSet_Confidence(), ecorePackage.getEBigDecimal(), "confidence", null, 0, 1, RuleSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRuleSet_Coverage(), ecorePackage.getEBigDecimal(), "coverage", null, 0, 1, RuleSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRuleSet_WireAhead(), this.getDimension(), "wireAhead", null, 0, 1, RuleSet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(spanEClass, Span.class, "Span", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSpan_Figure(), this.getFigureClass(), "figure", null, 1, 1, Span.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpan_Kinds(), this.getDeviceKind(), "kinds", null, 0, -1, Span.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpan_Below(), this.getDimension(), "below", null, 1, 1, Span.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpan_Above(), this.getDimension(), "above", null, 1, 1, Span.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSpan_RunsLow(), ecorePackage.getEBoolean(), "runsLow", null, 0, 1, Span.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(clearanceRuleEClass, ClearanceRule.class, "ClearanceRule", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getClearanceRule_Outer(), this.getDeviceKind(), "outer", null, 0, -1, ClearanceRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClearanceRule_Inner(), this.getDeviceKind(), "inner", null, 0, -1, ClearanceRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClearanceRule_Required(), this.getDimension(), "required", null, 1, 1, ClearanceRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(afterUseRuleEClass, AfterUseRule.class, "AfterUseRule", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAfterUseRule_Kinds(), this.getDeviceKind(), "kinds", null, 0, -1, AfterUseRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAfterUseRule_GrowthLow(), ecorePackage.getEBigDecimal(), "growthLow", null, 1, 1, AfterUseRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAfterUseRule_GrowthCentre(), ecorePackage.getEBigDecimal(), "growthCentre", null, 1, 1, AfterUseRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAfterUseRule_GrowthHigh(), ecorePackage.getEBigDecimal(), "growthHigh", null, 1, 1, AfterUseRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(flowLimitEClass, FlowLimit.class, "FlowLimit", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFlowLimit_Use(), this.getFlowUse(), "use", null, 1, 1, FlowLimit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFlowLimit_Least(), ecorePackage.getEBigDecimal(), "least", null, 1, 1, FlowLimit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(allowanceEClass, Allowance.class, "Allowance", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAllowance_Purpose(), this.getAllowancePurpose(), "purpose", null, 1, 1, Allowance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAllowance_Length(), this.getDimension(), "length", null, 1, 1, Allowance.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(ratioBandEClass, RatioBand.class, "RatioBand", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRatioBand_Use(), this.getRatioUse(), "use", null, 1, 1, RatioBand.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRatioBand_Low(), ecorePackage.getEBigDecimal(), "low", null, 0, 1, RatioBand.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRatioBand_High(), ecorePackage.getEBigDecimal(), "high", null, 0, 1, RatioBand.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRatioBand_Meaning(), ecorePackage.getEString(), "meaning", null, 1, 1, RatioBand.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(chanceLimitEClass, ChanceLimit.class, "ChanceLimit", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getChanceLimit_Greatest(), ecorePackage.getEBigDecimal(), "greatest", null, 1, 1, ChanceLimit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(fitChartEClass, FitChart.class, "FitChart", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFitChart_Audience(), ecorePackage.getEString(), "audience", null, 0, 1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFitChart_Author(), ecorePackage.getEString(), "author", null, 0, 1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFitChart_Libraries(), ecorePackage.getEString(), "libraries", null, 1, -1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFitChart_Rules(), ecorePackage.getEString(), "rules", null, 1, 1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFitChart_Outer(), this.getAxis(), null, "outer", null, 1, 1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFitChart_Inner(), this.getAxis(), null, "inner", null, 1, 1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFitChart_Conditions(), this.getConditions(), null, "conditions", null, 0, 1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFitChart_Path(), this.getVesselPath(), null, "path", null, 0, 1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFitChart_Lesion(), this.getLesion(), null, "lesion", null, 0, 1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFitChart_Paper(), this.getPaper(), null, "paper", null, 0, 1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFitChart_Footnotes(), ecorePackage.getEString(), "footnotes", null, 0, -1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getFitChart_SignOff(), this.getSignOff(), null, "signOff", null, 0, 1, FitChart.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(signOffEClass, SignOff.class, "SignOff", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSignOff_By(), ecorePackage.getEString(), "by", null, 1, 1, SignOff.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSignOff_Date(), ecorePackage.getEString(), "date", null, 1, 1, SignOff.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSignOff_RuleSet(), ecorePackage.getEString(), "ruleSet", null, 0, 1, SignOff.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSignOff_Asked(), ecorePackage.getEString(), "asked", null, 0, -1, SignOff.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSignOff_Documents(), this.getDocumentHash(), null, "documents", null, 0, -1, SignOff.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSignOff_Inner(), ecorePackage.getEString(), "inner", null, 0, -1, SignOff.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSignOff_Rows(), this.getSignedRow(), null, "rows", null, 0, -1, SignOff.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(signedRowEClass, SignedRow.class, "SignedRow", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSignedRow_Outer(), ecorePackage.getEString(), "outer", null, 1, 1, SignedRow.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSignedRow_In(), ecorePackage.getEString(), "in", null, 1, 1, SignedRow.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSignedRow_Out(), ecorePackage.getEString(), "out", null, 0, 1, SignedRow.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(axisEClass, Axis.class, "Axis", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAxis_Kinds(), this.getDeviceKind(), "kinds", null, 0, -1, Axis.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAxis_Devices(), ecorePackage.getEString(), "devices", null, 0, -1, Axis.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAxis_Hidden(), ecorePackage.getEString(), "hidden", null, 0, -1, Axis.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAxis_GroupBy(), this.getGrouping(), "groupBy", "none", 0, 1, Axis.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAxis_SortBy(), this.getSorting(), "sortBy", "as listed", 0, 1, Axis.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(conditionsEClass, Conditions.class, "Conditions", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getConditions_Direction(), this.getDirection(), "direction", "tipFirst", 0, 1, Conditions.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getConditions_Wire(), ecorePackage.getEString(), "wire", null, 0, 1, Conditions.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getConditions_Reach(), this.getDimension(), "reach", null, 0, 1, Conditions.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getConditions_Inside(), this.getOccupant(), null, "inside", null, 0, -1, Conditions.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getConditions_Through(), this.getThroughExtension(), null, "through", null, 0, 1, Conditions.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getConditions_Bends(), this.getBend(), null, "bends", null, 0, -1, Conditions.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getConditions_AfterInflation(), ecorePackage.getEBoolean(), "afterInflation", null, 0, 1, Conditions.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(occupantEClass, Occupant.class, "Occupant", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getOccupant_Device(), ecorePackage.getEString(), "device", null, 1, 1, Occupant.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOccupant_Wire(), ecorePackage.getEString(), "wire", null, 0, 1, Occupant.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOccupant_TipAhead(), this.getOffset(), "tipAhead", null, 0, 1, Occupant.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOccupant_Used(), ecorePackage.getEBoolean(), "used", null, 0, 1, Occupant.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(throughExtensionEClass, ThroughExtension.class, "ThroughExtension", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getThroughExtension_Extension(), ecorePackage.getEString(), "extension", null, 1, 1, ThroughExtension.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getThroughExtension_Protrusion(), this.getOffset(), "protrusion", null, 0, 1, ThroughExtension.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(bendEClass, Bend.class, "Bend", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBend_Where(), this.getBendPlace(), "where", "lumen", 0, 1, Bend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBend_Radius(), this.getDimension(), "radius", null, 1, 1, Bend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBend_AngleDegrees(), ecorePackage.getEBigDecimal(), "angleDegrees", null, 0, 1, Bend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBend_VesselDiameter(), this.getDimension(), "vesselDiameter", null, 0, 1, Bend.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(vesselPathEClass, VesselPath.class, "VesselPath", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getVesselPath_Name(), ecorePackage.getEString(), "name", null, 0, 1, VesselPath.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getVesselPath_Segments(), this.getVesselSegment(), null, "segments", null, 0, -1, VesselPath.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(vesselSegmentEClass, VesselSegment.class, "VesselSegment", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getVesselSegment_Name(), ecorePackage.getEString(), "name", null, 0, 1, VesselSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVesselSegment_Length(), this.getDimension(), "length", null, 0, 1, VesselSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVesselSegment_Diameter(), this.getDimension(), "diameter", null, 0, 1, VesselSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVesselSegment_BendRadius(), this.getDimension(), "bendRadius", null, 0, 1, VesselSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getVesselSegment_BendAngleDegrees(), ecorePackage.getEBigDecimal(), "bendAngleDegrees", null, 0, 1, VesselSegment.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(lesionEClass, Lesion.class, "Lesion", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLesion_Name(), ecorePackage.getEString(), "name", null, 0, 1, Lesion.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesion_At(), this.getDimension(), "at", null, 0, 1, Lesion.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesion_Length(), this.getDimension(), "length", null, 0, 1, Lesion.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesion_Diameter(), this.getDimension(), "diameter", null, 0, 1, Lesion.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesion_Reference(), this.getDimension(), "reference", null, 0, 1, Lesion.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(paperEClass, Paper.class, "Paper", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPaper_Size(), this.getPaperSize(), "size", "A4", 0, 1, Paper.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaper_Orientation(), this.getOrientation(), "orientation", "landscape", 0, 1, Paper.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaper_PrimaryUnit(), this.getPrimaryUnit(), "primaryUnit", "mm", 0, 1, Paper.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPaper_ShowNumbers(), this.getShownNumbers(), "showNumbers", "worst", 0, 1, Paper.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(techniqueLibraryEClass, TechniqueLibrary.class, "TechniqueLibrary", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTechniqueLibrary_Situation(), ecorePackage.getEString(), "situation", null, 0, 1, TechniqueLibrary.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTechniqueLibrary_Facts(), this.getFact(), null, "facts", null, 0, -1, TechniqueLibrary.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTechniqueLibrary_Setups(), this.getSetup(), null, "setups", null, 0, -1, TechniqueLibrary.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTechniqueLibrary_Techniques(), this.getTechnique(), null, "techniques", null, 0, -1, TechniqueLibrary.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTechniqueLibrary_BailOut(), this.getRole(), null, "bailOut", null, 0, -1, TechniqueLibrary.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTechniqueLibrary_StopRules(), this.getStopRule(), null, "stopRules", null, 0, -1, TechniqueLibrary.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(factEClass, Fact.class, "Fact", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFact_Id(), ecorePackage.getEString(), "id", null, 1, 1, Fact.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFact_Words(), ecorePackage.getEString(), "words", null, 1, 1, Fact.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(moveEClass, Move.class, "Move", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMove_Id(), ecorePackage.getEString(), "id", null, 1, 1, Move.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMove_Name(), ecorePackage.getEString(), "name", null, 1, 1, Move.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMove_Hazard(), this.getHazard(), "hazard", null, 1, 1, Move.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMove_Roles(), this.getRole(), null, "roles", null, 0, -1, Move.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getMove_Needs(), this.getNeed(), null, "needs", null, 0, -1, Move.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMove_Setups(), ecorePackage.getEString(), "setups", null, 0, -1, Move.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(costedEClass, Costed.class, "Costed", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCosted_Minutes(), ecorePackage.getEBigDecimal(), "minutes", null, 0, 1, Costed.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCosted_ContrastMl(), ecorePackage.getEBigDecimal(), "contrastMl", null, 0, 1, Costed.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCosted_DoseMgy(), ecorePackage.getEBigDecimal(), "doseMgy", null, 0, 1, Costed.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCosted_Money(), ecorePackage.getEBigDecimal(), "money", null, 0, 1, Costed.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(advisedEClass, Advised.class, "Advised", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAdvised_Changes(), ecorePackage.getEString(), "changes", null, 0, -1, Advised.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAdvised_Cautions(), ecorePackage.getEString(), "cautions", null, 0, -1, Advised.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAdvised_OffLabel(), ecorePackage.getEString(), "offLabel", null, 0, 1, Advised.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAdvised_Stop(), ecorePackage.getEString(), "stop", null, 0, 1, Advised.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getAdvised_Published(), this.getPublished(), null, "published", null, 0, -1, Advised.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(setupEClass, Setup.class, "Setup", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getSetup_Leaves(), this.getPlacement(), null, "leaves", null, 0, -1, Setup.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSetup_ExchangesWire(), ecorePackage.getEBoolean(), "exchangesWire", null, 0, 1, Setup.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(techniqueEClass, Technique.class, "Technique", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTechnique_Axis(), this.getTechniqueAxis(), "axis", null, 1, 1, Technique.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTechnique_After(), ecorePackage.getEString(), "after", null, 0, -1, Technique.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTechnique_Tries(), this.getPlannedTry(), null, "tries", null, 0, -1, Technique.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(roleEClass, Role.class, "Role", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRole_Id(), ecorePackage.getEString(), "id", null, 1, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_Name(), ecorePackage.getEString(), "name", null, 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_Kinds(), this.getDeviceKind(), "kinds", null, 0, -1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_Devices(), ecorePackage.getEString(), "devices", null, 0, -1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_Equipment(), ecorePackage.getEString(), "equipment", null, 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_NominalDiameter(), this.getDimension(), "nominalDiameter", null, 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_NominalLength(), this.getDimension(), "nominalLength", null, 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_Wire(), this.getDimension(), "wire", null, 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_ToVesselFrom(), ecorePackage.getEBigDecimal(), "toVesselFrom", null, 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_ToVesselTo(), ecorePackage.getEBigDecimal(), "toVesselTo", null, 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_Task(), this.getRoleTask(), "task", "pass", 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_Carrier(), this.getCarrier(), "carrier", "mainWire", 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_Goal(), this.getRoleGoal(), "goal", "lesion", 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_Count(), ecorePackage.getEInt(), "count", "1", 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRole_OnlyIfWireIsShort(), ecorePackage.getEBoolean(), "onlyIfWireIsShort", null, 0, 1, Role.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(needEClass, Need.class, "Need", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getNeed_Fact(), ecorePackage.getEString(), "fact", null, 0, 1, Need.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getNeed_Vessel(), this.getDimension(), "vessel", null, 0, 1, Need.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getNeed_Branch(), this.getDimension(), "branch", null, 0, 1, Need.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(placementEClass, Placement.class, "Placement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPlacement_Slot(), this.getSystemSlot(), "slot", null, 1, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_Role(), ecorePackage.getEString(), "role", null, 1, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_Protrusion(), this.getDimension(), "protrusion", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(plannedTryEClass, PlannedTry.class, "PlannedTry", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPlannedTry_Successes(), ecorePackage.getEInt(), "successes", null, 0, 1, PlannedTry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlannedTry_Failures(), ecorePackage.getEInt(), "failures", null, 0, 1, PlannedTry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPlannedTry_Prior(), this.getPrior(), null, "prior", null, 1, 1, PlannedTry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(priorEClass, Prior.class, "Prior", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPrior_Successes(), ecorePackage.getEBigDecimal(), "successes", null, 1, 1, Prior.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrior_Failures(), ecorePackage.getEBigDecimal(), "failures", null, 1, 1, Prior.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPrior_Label(), ecorePackage.getEString(), "label", null, 1, 1, Prior.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(publishedEClass, Published.class, "Published", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPublished_Text(), ecorePackage.getEString(), "text", null, 1, 1, Published.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stopRuleEClass, StopRule.class, "StopRule", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStopRule_Id(), ecorePackage.getEString(), "id", null, 1, 1, StopRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStopRule_Words(), ecorePackage.getEString(), "words", null, 1, 1, StopRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStopRule_Resource(), this.getResourceKind(), "resource", null, 0, 1, StopRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStopRule_Limit(), ecorePackage.getEBigDecimal(), "limit", null, 0, 1, StopRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(caseDocumentEClass, CaseDocument.class, "CaseDocument", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCaseDocument_Libraries(), ecorePackage.getEString(), "libraries", null, 1, -1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCaseDocument_Rules(), ecorePackage.getEString(), "rules", null, 1, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCaseDocument_Techniques(), ecorePackage.getEString(), "techniques", null, 1, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCaseDocument_Shelf(), ecorePackage.getEString(), "shelf", null, 0, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCaseDocument_Day(), ecorePackage.getEString(), "day", null, 0, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_Access(), this.getAccess(), null, "access", null, 0, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_System(), this.getSystemInPlace(), null, "system", null, 1, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_Path(), this.getVesselPath(), null, "path", null, 0, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_Lesion(), this.getLesion(), null, "lesion", null, 0, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_Branch(), this.getSideBranch(), null, "branch", null, 0, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCaseDocument_Deliver(), ecorePackage.getEString(), "deliver", null, 0, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_Facts(), this.getStatedFact(), null, "facts", null, 0, -1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_Measures(), this.getLesionMeasures(), null, "measures", null, 0, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_Patient(), this.getPatientFigures(), null, "patient", null, 0, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_Aim(), this.getCaseAim(), null, "aim", null, 1, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_Spent(), this.getCosts(), null, "spent", null, 0, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_Log(), this.getLoggedAttempt(), null, "log", null, 0, -1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseDocument_Closing(), this.getClosing(), null, "closing", null, 0, 1, CaseDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(accessEClass, Access.class, "Access", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAccess_Site(), ecorePackage.getEString(), "site", null, 0, 1, Access.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAccess_Vessel(), this.getDimension(), "vessel", null, 0, 1, Access.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(systemInPlaceEClass, SystemInPlace.class, "SystemInPlace", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSystemInPlace_Sheath(), ecorePackage.getEString(), "sheath", null, 0, 1, SystemInPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSystemInPlace_Valve(), ecorePackage.getEString(), "valve", null, 0, 1, SystemInPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSystemInPlace_Guide(), ecorePackage.getEString(), "guide", null, 1, 1, SystemInPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSystemInPlace_Extension(), this.getThroughExtension(), null, "extension", null, 0, 1, SystemInPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSystemInPlace_Microcatheter(), ecorePackage.getEString(), "microcatheter", null, 0, 1, SystemInPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSystemInPlace_MainWire(), ecorePackage.getEString(), "mainWire", null, 0, 1, SystemInPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSystemInPlace_SecondWire(), ecorePackage.getEString(), "secondWire", null, 0, 1, SystemInPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSystemInPlace_Anchor(), ecorePackage.getEString(), "anchor", null, 0, 1, SystemInPlace.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sideBranchEClass, SideBranch.class, "SideBranch", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSideBranch_Name(), ecorePackage.getEString(), "name", null, 0, 1, SideBranch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSideBranch_At(), this.getDimension(), "at", null, 0, 1, SideBranch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSideBranch_Diameter(), this.getDimension(), "diameter", null, 0, 1, SideBranch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSideBranch_Depth(), this.getDimension(), "depth", null, 0, 1, SideBranch.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(statedFactEClass, StatedFact.class, "StatedFact", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStatedFact_Fact(), ecorePackage.getEString(), "fact", null, 1, 1, StatedFact.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStatedFact_Holds(), ecorePackage.getEBoolean(), "holds", null, 1, 1, StatedFact.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(lesionMeasuresEClass, LesionMeasures.class, "LesionMeasures", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLesionMeasures_BluntStump(), ecorePackage.getEBoolean(), "bluntStump", null, 0, 1, LesionMeasures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesionMeasures_Calcification(), ecorePackage.getEBoolean(), "calcification", null, 0, 1, LesionMeasures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesionMeasures_BendDegrees(), ecorePackage.getEBigDecimal(), "bendDegrees", null, 0, 1, LesionMeasures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesionMeasures_FailedBefore(), ecorePackage.getEBoolean(), "failedBefore", null, 0, 1, LesionMeasures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesionMeasures_OcclusionMonths(), ecorePackage.getEBigDecimal(), "occlusionMonths", null, 0, 1, LesionMeasures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesionMeasures_CalciumDegrees(), ecorePackage.getEBigDecimal(), "calciumDegrees", null, 0, 1, LesionMeasures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesionMeasures_CalciumThickness(), this.getDimension(), "calciumThickness", null, 0, 1, LesionMeasures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesionMeasures_CalciumLength(), this.getDimension(), "calciumLength", null, 0, 1, LesionMeasures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLesionMeasures_Traits(), this.getLesionTrait(), "traits", null, 0, -1, LesionMeasures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(patientFiguresEClass, PatientFigures.class, "PatientFigures", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPatientFigures_Age(), ecorePackage.getEIntegerObject(), "age", null, 0, 1, PatientFigures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPatientFigures_Weight(), ecorePackage.getEString(), "weight", null, 0, 1, PatientFigures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPatientFigures_Creatinine(), ecorePackage.getEString(), "creatinine", null, 0, 1, PatientFigures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPatientFigures_Sex(), this.getSex(), "sex", null, 0, 1, PatientFigures.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(caseAimEClass, CaseAim.class, "CaseAim", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCaseAim_Objective(), this.getResourceKind(), "objective", "time", 0, 1, CaseAim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCaseAim_StoppingCost(), ecorePackage.getEBigDecimal(), "stoppingCost", null, 1, 1, CaseAim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCaseAim_TiersFirst(), ecorePackage.getEBoolean(), "tiersFirst", "true", 0, 1, CaseAim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCaseAim_OneNewRiskAStep(), ecorePackage.getEBoolean(), "oneNewRiskAStep", "true", 0, 1, CaseAim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCaseAim_SameAxisDiscount(), ecorePackage.getEBigDecimal(), "sameAxisDiscount", null, 0, 1, CaseAim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCaseAim_BudgetsLimit(), ecorePackage.getEBoolean(), "budgetsLimit", null, 0, 1, CaseAim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCaseAim_Budgets(), this.getCosts(), null, "budgets", null, 0, 1, CaseAim.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(costsEClass, Costs.class, "Costs", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(loggedAttemptEClass, LoggedAttempt.class, "LoggedAttempt", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLoggedAttempt_Move(), ecorePackage.getEString(), "move", null, 1, 1, LoggedAttempt.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLoggedAttempt_Outcome(), this.getAttemptOutcome(), "outcome", null, 1, 1, LoggedAttempt.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getLoggedAttempt_Units(), this.getUsedUnit(), null, "units", null, 0, -1, LoggedAttempt.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLoggedAttempt_Remark(), ecorePackage.getEString(), "remark", null, 0, 1, LoggedAttempt.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(usedUnitEClass, UsedUnit.class, "UsedUnit", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getUsedUnit_Role(), ecorePackage.getEString(), "role", null, 1, 1, UsedUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUsedUnit_Item(), ecorePackage.getEString(), "item", null, 1, 1, UsedUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUsedUnit_Lot(), ecorePackage.getEString(), "lot", null, 0, 1, UsedUnit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(closingEClass, Closing.class, "Closing", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getClosing_Closed(), ecorePackage.getEString(), "closed", null, 1, 1, Closing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClosing_Ended(), this.getCaseEnd(), "ended", null, 1, 1, Closing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getClosing_Plan(), this.getClosedStep(), null, "plan", null, 0, -1, Closing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getClosing_Devices(), this.getClosedDevice(), null, "devices", null, 0, -1, Closing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getClosing_Hashes(), this.getDocumentHash(), null, "hashes", null, 0, -1, Closing.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(closedStepEClass, ClosedStep.class, "ClosedStep", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getClosedStep_Move(), ecorePackage.getEString(), "move", null, 1, 1, ClosedStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClosedStep_Name(), ecorePackage.getEString(), "name", null, 0, 1, ClosedStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClosedStep_Devices(), ecorePackage.getEString(), "devices", null, 0, -1, ClosedStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(closedDeviceEClass, ClosedDevice.class, "ClosedDevice", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getClosedDevice_Id(), ecorePackage.getEString(), "id", null, 1, 1, ClosedDevice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClosedDevice_Item(), ecorePackage.getEString(), "item", null, 0, 1, ClosedDevice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClosedDevice_Lot(), ecorePackage.getEString(), "lot", null, 0, 1, ClosedDevice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClosedDevice_Expiry(), ecorePackage.getEString(), "expiry", null, 0, 1, ClosedDevice.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(documentHashEClass, DocumentHash.class, "DocumentHash", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDocumentHash_File(), ecorePackage.getEString(), "file", null, 1, 1, DocumentHash.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDocumentHash_Revision(), ecorePackage.getEString(), "revision", null, 0, 1, DocumentHash.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDocumentHash_Sha256(), ecorePackage.getEString(), "sha256", null, 1, 1, DocumentHash.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(shelfDocumentEClass, ShelfDocument.class, "ShelfDocument", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getShelfDocument_Libraries(), ecorePackage.getEString(), "libraries", null, 0, -1, ShelfDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getShelfDocument_Currency(), ecorePackage.getEString(), "currency", null, 0, 1, ShelfDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getShelfDocument_Items(), this.getStockItem(), null, "items", null, 0, -1, ShelfDocument.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stockItemEClass, StockItem.class, "StockItem", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStockItem_Id(), ecorePackage.getEString(), "id", null, 1, 1, StockItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockItem_Name(), ecorePackage.getEString(), "name", null, 0, 1, StockItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockItem_Device(), ecorePackage.getEString(), "device", null, 0, 1, StockItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockItem_Equipment(), ecorePackage.getEString(), "equipment", null, 0, 1, StockItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockItem_Code(), ecorePackage.getEString(), "code", null, 0, 1, StockItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockItem_ParLevel(), ecorePackage.getEInt(), "parLevel", null, 0, 1, StockItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockItem_Price(), ecorePackage.getEBigDecimal(), "price", null, 0, 1, StockItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getStockItem_Lots(), this.getStockLot(), null, "lots", null, 0, -1, StockItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stockLotEClass, StockLot.class, "StockLot", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStockLot_Lot(), ecorePackage.getEString(), "lot", null, 0, 1, StockLot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockLot_Expiry(), ecorePackage.getEString(), "expiry", null, 0, 1, StockLot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockLot_Quantity(), ecorePackage.getEInt(), "quantity", "1", 1, 1, StockLot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockLot_Location(), ecorePackage.getEString(), "location", null, 0, 1, StockLot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStockLot_Serial(), ecorePackage.getEString(), "serial", null, 0, 1, StockLot.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(sourceKindEEnum, SourceKind.class, "SourceKind");
		addEEnumLiteral(sourceKindEEnum, SourceKind.INSTRUCTIONS_FOR_USE);
		addEEnumLiteral(sourceKindEEnum, SourceKind.LABEL);
		addEEnumLiteral(sourceKindEEnum, SourceKind.CATALOGUE);
		addEEnumLiteral(sourceKindEEnum, SourceKind.BENCH_REPORT);
		addEEnumLiteral(sourceKindEEnum, SourceKind.PUBLICATION);
		addEEnumLiteral(sourceKindEEnum, SourceKind.STANDARD);
		addEEnumLiteral(sourceKindEEnum, SourceKind.COMMON_PRACTICE);
		addEEnumLiteral(sourceKindEEnum, SourceKind.FROM_MEMORY);
		addEEnumLiteral(sourceKindEEnum, SourceKind.MEASURED);

		initEEnum(deviceKindEEnum, DeviceKind.class, "DeviceKind");
		addEEnumLiteral(deviceKindEEnum, DeviceKind.INTRODUCER_SHEATH);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.GUIDE_CATHETER);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.GUIDE_EXTENSION);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.INNER_CATHETER);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.MICROCATHETER);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.DUAL_LUMEN_MICROCATHETER);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.GUIDEWIRE);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.BALLOON_CATHETER);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.SCORING_BALLOON);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.CUTTING_BALLOON);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.LITHOTRIPSY_BALLOON);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.STENT_SYSTEM);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.COVERED_STENT_SYSTEM);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.ROTATIONAL_BURR);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.ORBITAL_CROWN);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.LASER_CATHETER);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.IMAGING_CATHETER);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.ASPIRATION_CATHETER);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.SNARE);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.COIL);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.DRAIN_CATHETER);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.HAEMOSTASIS_VALVE);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.DILATOR);
		addEEnumLiteral(deviceKindEEnum, DeviceKind.OTHER);

		initEEnum(lumenUseEEnum, LumenUse.class, "LumenUse");
		addEEnumLiteral(lumenUseEEnum, LumenUse.WORKING);
		addEEnumLiteral(lumenUseEEnum, LumenUse.WIRE);
		addEEnumLiteral(lumenUseEEnum, LumenUse.INFLATION);
		addEEnumLiteral(lumenUseEEnum, LumenUse.FLUSH);
		addEEnumLiteral(lumenUseEEnum, LumenUse.IMAGING);

		initEEnum(lumenOpeningEEnum, LumenOpening.class, "LumenOpening");
		addEEnumLiteral(lumenOpeningEEnum, LumenOpening.HUB);
		addEEnumLiteral(lumenOpeningEEnum, LumenOpening.SIDE_PORT);
		addEEnumLiteral(lumenOpeningEEnum, LumenOpening.COLLAR);

		initEEnum(cutterTypeEEnum, CutterType.class, "CutterType");
		addEEnumLiteral(cutterTypeEEnum, CutterType.BURR);
		addEEnumLiteral(cutterTypeEEnum, CutterType.CROWN);
		addEEnumLiteral(cutterTypeEEnum, CutterType.LASER_TIP);
		addEEnumLiteral(cutterTypeEEnum, CutterType.SCORING_ELEMENT);
		addEEnumLiteral(cutterTypeEEnum, CutterType.BLADE);

		initEEnum(transducerTypeEEnum, TransducerType.class, "TransducerType");
		addEEnumLiteral(transducerTypeEEnum, TransducerType.ULTRASOUND);
		addEEnumLiteral(transducerTypeEEnum, TransducerType.OPTICAL);

		initEEnum(claimTypeEEnum, ClaimType.class, "ClaimType");
		addEEnumLiteral(claimTypeEEnum, ClaimType.MINIMUM_LUMEN);
		addEEnumLiteral(claimTypeEEnum, ClaimType.LARGEST_DEVICE);
		addEEnumLiteral(claimTypeEEnum, ClaimType.COMPATIBLE);
		addEEnumLiteral(claimTypeEEnum, ClaimType.NOT_COMPATIBLE);

		initEEnum(phaseEEnum, Phase.class, "Phase");
		addEEnumLiteral(phaseEEnum, Phase.IN);
		addEEnumLiteral(phaseEEnum, Phase.OUT);

		initEEnum(benchOutcomeEEnum, BenchOutcome.class, "BenchOutcome");
		addEEnumLiteral(benchOutcomeEEnum, BenchOutcome.PASSED);
		addEEnumLiteral(benchOutcomeEEnum, BenchOutcome.DID_NOT_PASS);

		initEEnum(figureClassEEnum, FigureClass.class, "FigureClass");
		addEEnumLiteral(figureClassEEnum, FigureClass.INNER_DIAMETER);
		addEEnumLiteral(figureClassEEnum, FigureClass.OUTER_DIAMETER);
		addEEnumLiteral(figureClassEEnum, FigureClass.CROSSING_PROFILE);
		addEEnumLiteral(figureClassEEnum, FigureClass.WIRE_DIAMETER);

		initEEnum(flowUseEEnum, FlowUse.class, "FlowUse");
		addEEnumLiteral(flowUseEEnum, FlowUse.CONTRAST);
		addEEnumLiteral(flowUseEEnum, FlowUse.PRESSURE);

		initEEnum(allowancePurposeEEnum, AllowancePurpose.class, "AllowancePurpose");
		addEEnumLiteral(allowancePurposeEEnum, AllowancePurpose.HUB_AND_VALVE);
		addEEnumLiteral(allowancePurposeEEnum, AllowancePurpose.EXTENSION_OVERLAP);
		addEEnumLiteral(allowancePurposeEEnum, AllowancePurpose.GRIP);

		initEEnum(ratioUseEEnum, RatioUse.class, "RatioUse");
		addEEnumLiteral(ratioUseEEnum, RatioUse.BALLOON_TO_VESSEL);
		addEEnumLiteral(ratioUseEEnum, RatioUse.BURR_TO_VESSEL);

		initEEnum(groupingEEnum, Grouping.class, "Grouping");
		addEEnumLiteral(groupingEEnum, Grouping.SIZE);
		addEEnumLiteral(groupingEEnum, Grouping.KIND);
		addEEnumLiteral(groupingEEnum, Grouping.MAKER);
		addEEnumLiteral(groupingEEnum, Grouping.LINE);
		addEEnumLiteral(groupingEEnum, Grouping.NONE);

		initEEnum(sortingEEnum, Sorting.class, "Sorting");
		addEEnumLiteral(sortingEEnum, Sorting.LUMEN);
		addEEnumLiteral(sortingEEnum, Sorting.PROFILE);
		addEEnumLiteral(sortingEEnum, Sorting.NAME);
		addEEnumLiteral(sortingEEnum, Sorting.AS_LISTED);

		initEEnum(directionEEnum, Direction.class, "Direction");
		addEEnumLiteral(directionEEnum, Direction.TIP_FIRST);
		addEEnumLiteral(directionEEnum, Direction.OVER_WIRE_TAIL);

		initEEnum(bendPlaceEEnum, BendPlace.class, "BendPlace");
		addEEnumLiteral(bendPlaceEEnum, BendPlace.LUMEN);
		addEEnumLiteral(bendPlaceEEnum, BendPlace.VESSEL);

		initEEnum(paperSizeEEnum, PaperSize.class, "PaperSize");
		addEEnumLiteral(paperSizeEEnum, PaperSize.A4);
		addEEnumLiteral(paperSizeEEnum, PaperSize.A3);
		addEEnumLiteral(paperSizeEEnum, PaperSize.LETTER);
		addEEnumLiteral(paperSizeEEnum, PaperSize.TABLOID);

		initEEnum(orientationEEnum, Orientation.class, "Orientation");
		addEEnumLiteral(orientationEEnum, Orientation.PORTRAIT);
		addEEnumLiteral(orientationEEnum, Orientation.LANDSCAPE);

		initEEnum(primaryUnitEEnum, PrimaryUnit.class, "PrimaryUnit");
		addEEnumLiteral(primaryUnitEEnum, PrimaryUnit.MM);
		addEEnumLiteral(primaryUnitEEnum, PrimaryUnit.IN);

		initEEnum(shownNumbersEEnum, ShownNumbers.class, "ShownNumbers");
		addEEnumLiteral(shownNumbersEEnum, ShownNumbers.WORST);
		addEEnumLiteral(shownNumbersEEnum, ShownNumbers.NOMINAL);
		addEEnumLiteral(shownNumbersEEnum, ShownNumbers.NONE);

		initEEnum(techniqueAxisEEnum, TechniqueAxis.class, "TechniqueAxis");
		addEEnumLiteral(techniqueAxisEEnum, TechniqueAxis.LOOK_FIRST);
		addEEnumLiteral(techniqueAxisEEnum, TechniqueAxis.MODIFY_THE_LESION);
		addEEnumLiteral(techniqueAxisEEnum, TechniqueAxis.ADD_SUPPORT);
		addEEnumLiteral(techniqueAxisEEnum, TechniqueAxis.LOWER_THE_PROFILE);
		addEEnumLiteral(techniqueAxisEEnum, TechniqueAxis.LEAVE_THE_PLAQUE);

		initEEnum(hazardEEnum, Hazard.class, "Hazard");
		addEEnumLiteral(hazardEEnum, Hazard.USUAL);
		addEEnumLiteral(hazardEEnum, Hazard.RAISED);
		addEEnumLiteral(hazardEEnum, Hazard.HIGH);

		initEEnum(roleTaskEEnum, RoleTask.class, "RoleTask");
		addEEnumLiteral(roleTaskEEnum, RoleTask.PASS);
		addEEnumLiteral(roleTaskEEnum, RoleTask.FILL);
		addEEnumLiteral(roleTaskEEnum, RoleTask.STAND_BY);

		initEEnum(carrierEEnum, Carrier.class, "Carrier");
		addEEnumLiteral(carrierEEnum, Carrier.MAIN_WIRE);
		addEEnumLiteral(carrierEEnum, Carrier.SECOND_WIRE);
		addEEnumLiteral(carrierEEnum, Carrier.NONE);

		initEEnum(roleGoalEEnum, RoleGoal.class, "RoleGoal");
		addEEnumLiteral(roleGoalEEnum, RoleGoal.LESION);
		addEEnumLiteral(roleGoalEEnum, RoleGoal.BRANCH);
		addEEnumLiteral(roleGoalEEnum, RoleGoal.GUIDE_TIP);
		addEEnumLiteral(roleGoalEEnum, RoleGoal.IN_GUIDE);

		initEEnum(systemSlotEEnum, SystemSlot.class, "SystemSlot");
		addEEnumLiteral(systemSlotEEnum, SystemSlot.GUIDE);
		addEEnumLiteral(systemSlotEEnum, SystemSlot.EXTENSION);
		addEEnumLiteral(systemSlotEEnum, SystemSlot.MAIN_WIRE);
		addEEnumLiteral(systemSlotEEnum, SystemSlot.SECOND_WIRE);
		addEEnumLiteral(systemSlotEEnum, SystemSlot.ANCHOR);
		addEEnumLiteral(systemSlotEEnum, SystemSlot.MICROCATHETER);

		initEEnum(resourceKindEEnum, ResourceKind.class, "ResourceKind");
		addEEnumLiteral(resourceKindEEnum, ResourceKind.TIME);
		addEEnumLiteral(resourceKindEEnum, ResourceKind.CONTRAST);
		addEEnumLiteral(resourceKindEEnum, ResourceKind.DOSE);
		addEEnumLiteral(resourceKindEEnum, ResourceKind.MONEY);

		initEEnum(attemptOutcomeEEnum, AttemptOutcome.class, "AttemptOutcome");
		addEEnumLiteral(attemptOutcomeEEnum, AttemptOutcome.CROSSED);
		addEEnumLiteral(attemptOutcomeEEnum, AttemptOutcome.FAILED);
		addEEnumLiteral(attemptOutcomeEEnum, AttemptOutcome.GIVEN_UP);

		initEEnum(caseEndEEnum, CaseEnd.class, "CaseEnd");
		addEEnumLiteral(caseEndEEnum, CaseEnd.CROSSED);
		addEEnumLiteral(caseEndEEnum, CaseEnd.STOPPED);

		initEEnum(sexEEnum, Sex.class, "Sex");
		addEEnumLiteral(sexEEnum, Sex.FEMALE);
		addEEnumLiteral(sexEEnum, Sex.MALE);

		initEEnum(lesionTraitEEnum, LesionTrait.class, "LesionTrait");
		addEEnumLiteral(lesionTraitEEnum, LesionTrait.ECCENTRIC);
		addEEnumLiteral(lesionTraitEEnum, LesionTrait.IRREGULAR);
		addEEnumLiteral(lesionTraitEEnum, LesionTrait.OSTIAL);
		addEEnumLiteral(lesionTraitEEnum, LesionTrait.BIFURCATION);
		addEEnumLiteral(lesionTraitEEnum, LesionTrait.THROMBUS);
		addEEnumLiteral(lesionTraitEEnum, LesionTrait.MODERATE_TORTUOSITY);
		addEEnumLiteral(lesionTraitEEnum, LesionTrait.EXCESSIVE_TORTUOSITY);
		addEEnumLiteral(lesionTraitEEnum, LesionTrait.BRANCH_AT_RISK);
		addEEnumLiteral(lesionTraitEEnum, LesionTrait.DEGENERATED_GRAFT);

		// Initialize data types
		initEDataType(dimensionEDataType, Dimension.class, "Dimension", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(pressureEDataType, Pressure.class, "Pressure", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(offsetEDataType, Offset.class, "Offset", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);

		// Create resource
		createResource(eNS_URI);

		// Create annotations
		// https://ferrule.invalid/annotation/1
		create_1Annotations();
	}

	/**
	 * Initializes the annotations for <b>https://ferrule.invalid/annotation/1</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void create_1Annotations()
	{
		String source = "https://ferrule.invalid/annotation/1";
		addAnnotation
		  (getExtraKey_Json(),
		   source,
		   new String[]
		   {
			   "label", "Value as JSON"
		   });
		addAnnotation
		  (getElement_Extras(),
		   source,
		   new String[]
		   {
			   "label", "Unknown keys"
		   });
		addAnnotation
		  (sourcedEClass,
		   source,
		   new String[]
		   {
			   "position", "last"
		   });
		addAnnotation
		  (getSourced_Source(),
		   source,
		   new String[]
		   {
			   "refers", "Source"
		   });
		addAnnotation
		  (getDocument_Date(),
		   source,
		   new String[]
		   {
			   "text", "date"
		   });
		addAnnotation
		  (getSource_Id(),
		   source,
		   new String[]
		   {
			   "label", "Id"
		   });
		addAnnotation
		  (getSource_Date(),
		   source,
		   new String[]
		   {
			   "text", "partial date"
		   });
		addAnnotation
		  (getSource_Reviewer(),
		   source,
		   new String[]
		   {
			   "label", "Reviewed by"
		   });
		addAnnotation
		  (getSource_Reviewed(),
		   source,
		   new String[]
		   {
			   "text", "date",
			   "label", "Reviewed on"
		   });
		addAnnotation
		  (deviceLibraryEClass,
		   source,
		   new String[]
		   {
			   "suffix", ".devices.json",
			   "format", "ferrule.devices"
		   });
		addAnnotation
		  (getDeviceLibrary_Lines(),
		   source,
		   new String[]
		   {
			   "label", "Device lines"
		   });
		addAnnotation
		  (getDeviceLibrary_Bench(),
		   source,
		   new String[]
		   {
			   "label", "Bench results"
		   });
		addAnnotation
		  (getDeviceParts_Id(),
		   source,
		   new String[]
		   {
			   "label", "Id"
		   });
		addAnnotation
		  (getDeviceParts_Model(),
		   source,
		   new String[]
		   {
			   "label", "Catalogue code"
		   });
		addAnnotation
		  (getDeviceParts_Size(),
		   source,
		   new String[]
		   {
			   "label", "Size designation"
		   });
		addAnnotation
		  (getDeviceParts_EffectiveLength(),
		   source,
		   new String[]
		   {
			   "figure", "LENGTH"
		   });
		addAnnotation
		  (getDeviceParts_TakesWire(),
		   source,
		   new String[]
		   {
			   "figure", "WIRE_DIAMETER",
			   "label", "Takes a wire up to"
		   });
		addAnnotation
		  (getDeviceParts_Cutter(),
		   source,
		   new String[]
		   {
			   "label", "Cutter"
		   });
		addAnnotation
		  (getDeviceParts_Wire(),
		   source,
		   new String[]
		   {
			   "label", "Wire traits"
		   });
		addAnnotation
		  (getDevice_Line(),
		   source,
		   new String[]
		   {
			   "refers", "DeviceLine",
			   "position", "after id"
		   });
		addAnnotation
		  (getShaftSection_From(),
		   source,
		   new String[]
		   {
			   "figure", "STATION",
			   "label", "From station"
		   });
		addAnnotation
		  (getShaftSection_To(),
		   source,
		   new String[]
		   {
			   "figure", "STATION",
			   "label", "To station"
		   });
		addAnnotation
		  (getShaftSection_Od(),
		   source,
		   new String[]
		   {
			   "figure", "OUTER_DIAMETER",
			   "label", "Outer diameter"
		   });
		addAnnotation
		  (getShaftSection_OdProximal(),
		   source,
		   new String[]
		   {
			   "figure", "OUTER_DIAMETER",
			   "label", "Outer diameter, proximal end"
		   });
		addAnnotation
		  (getShaftSection_OdAfter(),
		   source,
		   new String[]
		   {
			   "figure", "OUTER_DIAMETER",
			   "label", "Outer diameter after use"
		   });
		addAnnotation
		  (getShaftSection_OdAfterProximal(),
		   source,
		   new String[]
		   {
			   "figure", "OUTER_DIAMETER",
			   "label", "Outer diameter after use, proximal end"
		   });
		addAnnotation
		  (getShaftSection_Oval(),
		   source,
		   new String[]
		   {
			   "label", "Oval cross-section"
		   });
		addAnnotation
		  (getShaftSection_Discs(),
		   source,
		   new String[]
		   {
			   "label", "Discs of the cross-section"
		   });
		addAnnotation
		  (getOval_Width(),
		   source,
		   new String[]
		   {
			   "figure", "OUTER_DIAMETER"
		   });
		addAnnotation
		  (getOval_Height(),
		   source,
		   new String[]
		   {
			   "figure", "OUTER_DIAMETER"
		   });
		addAnnotation
		  (getDisc_X(),
		   source,
		   new String[]
		   {
			   "label", "Offset across"
		   });
		addAnnotation
		  (getDisc_Y(),
		   source,
		   new String[]
		   {
			   "label", "Offset up"
		   });
		addAnnotation
		  (getDisc_Diameter(),
		   source,
		   new String[]
		   {
			   "figure", "OUTER_DIAMETER"
		   });
		addAnnotation
		  (getLumen_DistalAt(),
		   source,
		   new String[]
		   {
			   "figure", "STATION",
			   "label", "Station of the distal opening"
		   });
		addAnnotation
		  (getLumen_ProximalAt(),
		   source,
		   new String[]
		   {
			   "figure", "STATION",
			   "label", "Station of the proximal opening"
		   });
		addAnnotation
		  (getLumen_Opens(),
		   source,
		   new String[]
		   {
			   "label", "Opens proximally at"
		   });
		addAnnotation
		  (getLumenSection_From(),
		   source,
		   new String[]
		   {
			   "figure", "STATION",
			   "label", "From station"
		   });
		addAnnotation
		  (getLumenSection_To(),
		   source,
		   new String[]
		   {
			   "figure", "STATION",
			   "label", "To station"
		   });
		addAnnotation
		  (getLumenSection_Id(),
		   source,
		   new String[]
		   {
			   "figure", "INNER_DIAMETER",
			   "label", "Inner diameter"
		   });
		addAnnotation
		  (getLumenSection_IdDistal(),
		   source,
		   new String[]
		   {
			   "figure", "INNER_DIAMETER",
			   "label", "Inner diameter, distal end"
		   });
		addAnnotation
		  (getMarker_At(),
		   source,
		   new String[]
		   {
			   "figure", "STATION",
			   "label", "Station of the distal edge"
		   });
		addAnnotation
		  (getMarker_Width(),
		   source,
		   new String[]
		   {
			   "figure", "LENGTH"
		   });
		addAnnotation
		  (getBalloon_Section(),
		   source,
		   new String[]
		   {
			   "refers", "ShaftSection",
			   "label", "Folded in section"
		   });
		addAnnotation
		  (getBalloon_Diameter(),
		   source,
		   new String[]
		   {
			   "figure", "BALLOON_DIAMETER"
		   });
		addAnnotation
		  (getBalloon_Length(),
		   source,
		   new String[]
		   {
			   "figure", "LENGTH"
		   });
		addAnnotation
		  (getComplianceRow_Diameter(),
		   source,
		   new String[]
		   {
			   "figure", "BALLOON_DIAMETER"
		   });
		addAnnotation
		  (getStent_Section(),
		   source,
		   new String[]
		   {
			   "refers", "ShaftSection",
			   "label", "Crimped on section"
		   });
		addAnnotation
		  (getStent_Diameter(),
		   source,
		   new String[]
		   {
			   "figure", "STENT_DIAMETER"
		   });
		addAnnotation
		  (getStent_Length(),
		   source,
		   new String[]
		   {
			   "figure", "LENGTH"
		   });
		addAnnotation
		  (getStent_MaximumDiameter(),
		   source,
		   new String[]
		   {
			   "figure", "STENT_DIAMETER",
			   "label", "Largest diameter after dilatation"
		   });
		addAnnotation
		  (getStent_StrutThickness(),
		   source,
		   new String[]
		   {
			   "figure", "CLEARANCE"
		   });
		addAnnotation
		  (getCutter_Section(),
		   source,
		   new String[]
		   {
			   "refers", "ShaftSection",
			   "label", "Sits at section"
		   });
		addAnnotation
		  (getCutter_Diameter(),
		   source,
		   new String[]
		   {
			   "figure", "OUTER_DIAMETER"
		   });
		addAnnotation
		  (getTransducer_Type(),
		   source,
		   new String[]
		   {
			   "label", "Images with"
		   });
		addAnnotation
		  (getTransducer_At(),
		   source,
		   new String[]
		   {
			   "figure", "STATION",
			   "label", "Station of the imaging plane"
		   });
		addAnnotation
		  (getWireTraits_Extendable(),
		   source,
		   new String[]
		   {
			   "label", "Can be extended"
		   });
		addAnnotation
		  (getClaim_Value(),
		   source,
		   new String[]
		   {
			   "figure", "INNER_DIAMETER",
			   "label", "Stated limit"
		   });
		addAnnotation
		  (getClaim_Kinds(),
		   source,
		   new String[]
		   {
			   "label", "Kinds of partner"
		   });
		addAnnotation
		  (getClaim_Sizes(),
		   source,
		   new String[]
		   {
			   "label", "Sizes of partner"
		   });
		addAnnotation
		  (getClaim_Devices(),
		   source,
		   new String[]
		   {
			   "label", "Partners"
		   });
		addAnnotation
		  (getClaim_Wire(),
		   source,
		   new String[]
		   {
			   "figure", "WIRE_DIAMETER",
			   "label", "With a wire up to"
		   });
		addAnnotation
		  (getClaim_Alone(),
		   source,
		   new String[]
		   {
			   "label", "Alone in the lumen"
		   });
		addAnnotation
		  (getClaim_Covers(),
		   source,
		   new String[]
		   {
			   "label", "Covers the way"
		   });
		addAnnotation
		  (getBenchResult_Outer(),
		   source,
		   new String[]
		   {
			   "refers", "Device",
			   "label", "Outer device"
		   });
		addAnnotation
		  (getBenchResult_Lumen(),
		   source,
		   new String[]
		   {
			   "refers", "Lumen",
			   "label", "Lumen of the outer device"
		   });
		addAnnotation
		  (getBenchResult_Inner(),
		   source,
		   new String[]
		   {
			   "refers", "Device",
			   "label", "Inner device"
		   });
		addAnnotation
		  (getBenchResult_Wire(),
		   source,
		   new String[]
		   {
			   "refers", "Device",
			   "label", "Wire in place"
		   });
		addAnnotation
		  (getBenchResult_Covers(),
		   source,
		   new String[]
		   {
			   "label", "Covers the way"
		   });
		addAnnotation
		  (getBenchResult_Samples(),
		   source,
		   new String[]
		   {
			   "least", "1",
			   "label", "Number of samples"
		   });
		addAnnotation
		  (ruleSetEClass,
		   source,
		   new String[]
		   {
			   "suffix", ".rules.json",
			   "format", "ferrule.rules"
		   });
		addAnnotation
		  (getRuleSet_Clearances(),
		   source,
		   new String[]
		   {
			   "label", "Required clearances"
		   });
		addAnnotation
		  (getRuleSet_AfterUse(),
		   source,
		   new String[]
		   {
			   "label", "Growth by use"
		   });
		addAnnotation
		  (getRuleSet_FlowLimits(),
		   source,
		   new String[]
		   {
			   "label", "Limits of flow"
		   });
		addAnnotation
		  (getRuleSet_Allowances(),
		   source,
		   new String[]
		   {
			   "label", "Allowances of length"
		   });
		addAnnotation
		  (getRuleSet_RatioBands(),
		   source,
		   new String[]
		   {
			   "label", "Bands of ratios to the vessel"
		   });
		addAnnotation
		  (getRuleSet_ChanceLimits(),
		   source,
		   new String[]
		   {
			   "label", "Limits of chance"
		   });
		addAnnotation
		  (getRuleSet_Confidence(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "below", "1"
		   });
		addAnnotation
		  (getRuleSet_Coverage(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "below", "1"
		   });
		addAnnotation
		  (getRuleSet_WireAhead(),
		   source,
		   new String[]
		   {
			   "figure", "LENGTH",
			   "label", "Wire ahead"
		   });
		addAnnotation
		  (getSpan_Figure(),
		   source,
		   new String[]
		   {
			   "label", "Class of figure"
		   });
		addAnnotation
		  (getSpan_Below(),
		   source,
		   new String[]
		   {
			   "figure", "CLEARANCE",
			   "label", "Below the centre by"
		   });
		addAnnotation
		  (getSpan_Above(),
		   source,
		   new String[]
		   {
			   "figure", "CLEARANCE",
			   "label", "Above the centre by"
		   });
		addAnnotation
		  (getSpan_RunsLow(),
		   source,
		   new String[]
		   {
			   "label", "Stated figures run low"
		   });
		addAnnotation
		  (getClearanceRule_Outer(),
		   source,
		   new String[]
		   {
			   "label", "Kinds of outer device"
		   });
		addAnnotation
		  (getClearanceRule_Inner(),
		   source,
		   new String[]
		   {
			   "label", "Kinds of inner device"
		   });
		addAnnotation
		  (getClearanceRule_Required(),
		   source,
		   new String[]
		   {
			   "figure", "CLEARANCE",
			   "label", "Required clearance"
		   });
		addAnnotation
		  (getAfterUseRule_GrowthLow(),
		   source,
		   new String[]
		   {
			   "above", "0"
		   });
		addAnnotation
		  (getAfterUseRule_GrowthCentre(),
		   source,
		   new String[]
		   {
			   "above", "0"
		   });
		addAnnotation
		  (getAfterUseRule_GrowthHigh(),
		   source,
		   new String[]
		   {
			   "above", "0"
		   });
		addAnnotation
		  (flowLimitEClass,
		   source,
		   new String[]
		   {
			   "label", "Limit of flow"
		   });
		addAnnotation
		  (getFlowLimit_Use(),
		   source,
		   new String[]
		   {
			   "label", "Needed for"
		   });
		addAnnotation
		  (getFlowLimit_Least(),
		   source,
		   new String[]
		   {
			   "least", "0",
			   "most", "1",
			   "label", "Least share of flow"
		   });
		addAnnotation
		  (allowanceEClass,
		   source,
		   new String[]
		   {
			   "label", "Allowance of length"
		   });
		addAnnotation
		  (getAllowance_Length(),
		   source,
		   new String[]
		   {
			   "figure", "LENGTH"
		   });
		addAnnotation
		  (ratioBandEClass,
		   source,
		   new String[]
		   {
			   "label", "Band of ratios"
		   });
		addAnnotation
		  (getRatioBand_Use(),
		   source,
		   new String[]
		   {
			   "label", "Ratio of"
		   });
		addAnnotation
		  (getRatioBand_Low(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "label", "From"
		   });
		addAnnotation
		  (getRatioBand_High(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "label", "To"
		   });
		addAnnotation
		  (chanceLimitEClass,
		   source,
		   new String[]
		   {
			   "label", "Limit of chance"
		   });
		addAnnotation
		  (getChanceLimit_Greatest(),
		   source,
		   new String[]
		   {
			   "least", "0",
			   "most", "1",
			   "label", "Greatest chance"
		   });
		addAnnotation
		  (fitChartEClass,
		   source,
		   new String[]
		   {
			   "suffix", ".chart.json",
			   "format", "ferrule.chart"
		   });
		addAnnotation
		  (getFitChart_Libraries(),
		   source,
		   new String[]
		   {
			   "refers", "file .devices.json",
			   "label", "Device libraries"
		   });
		addAnnotation
		  (getFitChart_Rules(),
		   source,
		   new String[]
		   {
			   "refers", "file .rules.json",
			   "label", "Rule set"
		   });
		addAnnotation
		  (getFitChart_Outer(),
		   source,
		   new String[]
		   {
			   "label", "Outer devices"
		   });
		addAnnotation
		  (getFitChart_Inner(),
		   source,
		   new String[]
		   {
			   "label", "Inner devices"
		   });
		addAnnotation
		  (getFitChart_Path(),
		   source,
		   new String[]
		   {
			   "label", "Vessel path"
		   });
		addAnnotation
		  (getFitChart_SignOff(),
		   source,
		   new String[]
		   {
			   "label", "Sign-off"
		   });
		addAnnotation
		  (signOffEClass,
		   source,
		   new String[]
		   {
			   "label", "Sign-off"
		   });
		addAnnotation
		  (getSignOff_Date(),
		   source,
		   new String[]
		   {
			   "text", "date",
			   "label", "Signed off on"
		   });
		addAnnotation
		  (getSignOff_RuleSet(),
		   source,
		   new String[]
		   {
			   "label", "Rule set"
		   });
		addAnnotation
		  (getSignOff_Documents(),
		   source,
		   new String[]
		   {
			   "label", "Documents then"
		   });
		addAnnotation
		  (getSignOff_Inner(),
		   source,
		   new String[]
		   {
			   "label", "Columns then"
		   });
		addAnnotation
		  (getSignOff_Rows(),
		   source,
		   new String[]
		   {
			   "label", "Rows then"
		   });
		addAnnotation
		  (signedRowEClass,
		   source,
		   new String[]
		   {
			   "label", "Row"
		   });
		addAnnotation
		  (getSignedRow_In(),
		   source,
		   new String[]
		   {
			   "label", "Going in"
		   });
		addAnnotation
		  (getSignedRow_Out(),
		   source,
		   new String[]
		   {
			   "label", "Coming out"
		   });
		addAnnotation
		  (getAxis_Hidden(),
		   source,
		   new String[]
		   {
			   "label", "Hidden devices"
		   });
		addAnnotation
		  (getConditions_Wire(),
		   source,
		   new String[]
		   {
			   "label", "Wire in place"
		   });
		addAnnotation
		  (getConditions_Reach(),
		   source,
		   new String[]
		   {
			   "figure", "LENGTH",
			   "label", "Reach beyond the outer device"
		   });
		addAnnotation
		  (getConditions_Inside(),
		   source,
		   new String[]
		   {
			   "label", "Already inside"
		   });
		addAnnotation
		  (getConditions_Through(),
		   source,
		   new String[]
		   {
			   "label", "Through a guide extension"
		   });
		addAnnotation
		  (getConditions_AfterInflation(),
		   source,
		   new String[]
		   {
			   "label", "Goes in after use"
		   });
		addAnnotation
		  (getOccupant_Wire(),
		   source,
		   new String[]
		   {
			   "label", "Over the wire"
		   });
		addAnnotation
		  (getOccupant_TipAhead(),
		   source,
		   new String[]
		   {
			   "label", "Tip beyond the outer device by"
		   });
		addAnnotation
		  (getOccupant_Used(),
		   source,
		   new String[]
		   {
			   "label", "Used before"
		   });
		addAnnotation
		  (throughExtensionEClass,
		   source,
		   new String[]
		   {
			   "label", "Through a guide extension"
		   });
		addAnnotation
		  (getThroughExtension_Extension(),
		   source,
		   new String[]
		   {
			   "label", "Guide extension"
		   });
		addAnnotation
		  (getThroughExtension_Protrusion(),
		   source,
		   new String[]
		   {
			   "label", "Tip beyond the outer device by"
		   });
		addAnnotation
		  (getBend_Where(),
		   source,
		   new String[]
		   {
			   "label", "What is bent"
		   });
		addAnnotation
		  (getBend_Radius(),
		   source,
		   new String[]
		   {
			   "figure", "RADIUS"
		   });
		addAnnotation
		  (getBend_AngleDegrees(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "most", "360",
			   "label", "Angle (degrees)"
		   });
		addAnnotation
		  (getBend_VesselDiameter(),
		   source,
		   new String[]
		   {
			   "figure", "VESSEL_DIAMETER"
		   });
		addAnnotation
		  (getVesselSegment_Length(),
		   source,
		   new String[]
		   {
			   "figure", "LENGTH"
		   });
		addAnnotation
		  (getVesselSegment_Diameter(),
		   source,
		   new String[]
		   {
			   "figure", "VESSEL_DIAMETER"
		   });
		addAnnotation
		  (getVesselSegment_BendRadius(),
		   source,
		   new String[]
		   {
			   "figure", "RADIUS"
		   });
		addAnnotation
		  (getVesselSegment_BendAngleDegrees(),
		   source,
		   new String[]
		   {
			   "least", "0",
			   "most", "360",
			   "label", "Bend angle (degrees)"
		   });
		addAnnotation
		  (getLesion_At(),
		   source,
		   new String[]
		   {
			   "figure", "STATION",
			   "label", "Station of the proximal end"
		   });
		addAnnotation
		  (getLesion_Length(),
		   source,
		   new String[]
		   {
			   "figure", "LENGTH"
		   });
		addAnnotation
		  (getLesion_Diameter(),
		   source,
		   new String[]
		   {
			   "label", "Minimum lumen diameter"
		   });
		addAnnotation
		  (getLesion_Reference(),
		   source,
		   new String[]
		   {
			   "figure", "VESSEL_DIAMETER",
			   "label", "Reference diameter"
		   });
		addAnnotation
		  (getPaper_Size(),
		   source,
		   new String[]
		   {
			   "label", "Paper size"
		   });
		addAnnotation
		  (getPaper_PrimaryUnit(),
		   source,
		   new String[]
		   {
			   "label", "Unit that comes first"
		   });
		addAnnotation
		  (getPaper_ShowNumbers(),
		   source,
		   new String[]
		   {
			   "label", "Numbers in the cells"
		   });
		addAnnotation
		  (techniqueLibraryEClass,
		   source,
		   new String[]
		   {
			   "suffix", ".techniques.json",
			   "format", "ferrule.techniques"
		   });
		addAnnotation
		  (getTechniqueLibrary_Setups(),
		   source,
		   new String[]
		   {
			   "label", "Set-ups"
		   });
		addAnnotation
		  (getTechniqueLibrary_BailOut(),
		   source,
		   new String[]
		   {
			   "label", "For bail-out"
		   });
		addAnnotation
		  (getFact_Id(),
		   source,
		   new String[]
		   {
			   "label", "Id"
		   });
		addAnnotation
		  (getMove_Id(),
		   source,
		   new String[]
		   {
			   "label", "Id"
		   });
		addAnnotation
		  (getMove_Setups(),
		   source,
		   new String[]
		   {
			   "refers", "Setup",
			   "label", "Set-ups in place"
		   });
		addAnnotation
		  (getCosted_Minutes(),
		   source,
		   new String[]
		   {
			   "least", "0",
			   "label", "Minutes"
		   });
		addAnnotation
		  (getCosted_ContrastMl(),
		   source,
		   new String[]
		   {
			   "least", "0",
			   "label", "Contrast (mL)"
		   });
		addAnnotation
		  (getCosted_DoseMgy(),
		   source,
		   new String[]
		   {
			   "least", "0",
			   "label", "Dose (mGy)"
		   });
		addAnnotation
		  (getCosted_Money(),
		   source,
		   new String[]
		   {
			   "least", "0"
		   });
		addAnnotation
		  (getAdvised_OffLabel(),
		   source,
		   new String[]
		   {
			   "label", "Off label because"
		   });
		addAnnotation
		  (getAdvised_Stop(),
		   source,
		   new String[]
		   {
			   "label", "Give up when"
		   });
		addAnnotation
		  (setupEClass,
		   source,
		   new String[]
		   {
			   "label", "Set-up"
		   });
		addAnnotation
		  (getSetup_Leaves(),
		   source,
		   new String[]
		   {
			   "position", "after setups",
			   "label", "Leaves in place"
		   });
		addAnnotation
		  (getSetup_ExchangesWire(),
		   source,
		   new String[]
		   {
			   "position", "after money",
			   "label", "Exchanges the main wire"
		   });
		addAnnotation
		  (getTechnique_Axis(),
		   source,
		   new String[]
		   {
			   "position", "after name"
		   });
		addAnnotation
		  (getTechnique_After(),
		   source,
		   new String[]
		   {
			   "position", "after setups",
			   "refers", "Technique",
			   "label", "Only after"
		   });
		addAnnotation
		  (getTechnique_Tries(),
		   source,
		   new String[]
		   {
			   "position", "after after"
		   });
		addAnnotation
		  (getRole_Id(),
		   source,
		   new String[]
		   {
			   "label", "Id"
		   });
		addAnnotation
		  (getRole_NominalLength(),
		   source,
		   new String[]
		   {
			   "figure", "LENGTH"
		   });
		addAnnotation
		  (getRole_Wire(),
		   source,
		   new String[]
		   {
			   "figure", "WIRE_DIAMETER",
			   "label", "Wire diameter"
		   });
		addAnnotation
		  (getRole_ToVesselFrom(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "label", "To the vessel, from"
		   });
		addAnnotation
		  (getRole_ToVesselTo(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "label", "To the vessel, to"
		   });
		addAnnotation
		  (getRole_Count(),
		   source,
		   new String[]
		   {
			   "least", "1"
		   });
		addAnnotation
		  (getRole_OnlyIfWireIsShort(),
		   source,
		   new String[]
		   {
			   "label", "Only if the wire is short"
		   });
		addAnnotation
		  (getNeed_Fact(),
		   source,
		   new String[]
		   {
			   "refers", "Fact"
		   });
		addAnnotation
		  (getPlacement_Role(),
		   source,
		   new String[]
		   {
			   "refers", "Role"
		   });
		addAnnotation
		  (getPlacement_Protrusion(),
		   source,
		   new String[]
		   {
			   "figure", "STATION",
			   "label", "Tip beyond the guide by at most"
		   });
		addAnnotation
		  (plannedTryEClass,
		   source,
		   new String[]
		   {
			   "label", "Try"
		   });
		addAnnotation
		  (getPlannedTry_Successes(),
		   source,
		   new String[]
		   {
			   "least", "0"
		   });
		addAnnotation
		  (getPlannedTry_Failures(),
		   source,
		   new String[]
		   {
			   "least", "0"
		   });
		addAnnotation
		  (getPrior_Successes(),
		   source,
		   new String[]
		   {
			   "above", "0"
		   });
		addAnnotation
		  (getPrior_Failures(),
		   source,
		   new String[]
		   {
			   "above", "0"
		   });
		addAnnotation
		  (publishedEClass,
		   source,
		   new String[]
		   {
			   "label", "Publication"
		   });
		addAnnotation
		  (getStopRule_Id(),
		   source,
		   new String[]
		   {
			   "label", "Id"
		   });
		addAnnotation
		  (getStopRule_Limit(),
		   source,
		   new String[]
		   {
			   "above", "0"
		   });
		addAnnotation
		  (caseDocumentEClass,
		   source,
		   new String[]
		   {
			   "suffix", ".case.json",
			   "format", "ferrule.case",
			   "label", "Case"
		   });
		addAnnotation
		  (getCaseDocument_Libraries(),
		   source,
		   new String[]
		   {
			   "refers", "file .devices.json",
			   "label", "Device libraries"
		   });
		addAnnotation
		  (getCaseDocument_Rules(),
		   source,
		   new String[]
		   {
			   "refers", "file .rules.json",
			   "label", "Rule set"
		   });
		addAnnotation
		  (getCaseDocument_Techniques(),
		   source,
		   new String[]
		   {
			   "refers", "file .techniques.json",
			   "label", "Techniques"
		   });
		addAnnotation
		  (getCaseDocument_Shelf(),
		   source,
		   new String[]
		   {
			   "refers", "file .shelf.json",
			   "label", "Shelf"
		   });
		addAnnotation
		  (getCaseDocument_Day(),
		   source,
		   new String[]
		   {
			   "text", "date",
			   "label", "Day of the case"
		   });
		addAnnotation
		  (getCaseDocument_System(),
		   source,
		   new String[]
		   {
			   "label", "System in place"
		   });
		addAnnotation
		  (getCaseDocument_Path(),
		   source,
		   new String[]
		   {
			   "label", "Vessel path"
		   });
		addAnnotation
		  (getCaseDocument_Branch(),
		   source,
		   new String[]
		   {
			   "label", "Side branch"
		   });
		addAnnotation
		  (getCaseDocument_Deliver(),
		   source,
		   new String[]
		   {
			   "label", "Device to deliver"
		   });
		addAnnotation
		  (getCaseDocument_Measures(),
		   source,
		   new String[]
		   {
			   "label", "Lesion measures"
		   });
		addAnnotation
		  (getCaseDocument_Patient(),
		   source,
		   new String[]
		   {
			   "label", "Patient figures"
		   });
		addAnnotation
		  (getAccess_Vessel(),
		   source,
		   new String[]
		   {
			   "figure", "VESSEL_DIAMETER",
			   "label", "Vessel diameter"
		   });
		addAnnotation
		  (systemInPlaceEClass,
		   source,
		   new String[]
		   {
			   "label", "System in place"
		   });
		addAnnotation
		  (getSystemInPlace_MainWire(),
		   source,
		   new String[]
		   {
			   "label", "Main wire"
		   });
		addAnnotation
		  (getSystemInPlace_SecondWire(),
		   source,
		   new String[]
		   {
			   "label", "Second wire"
		   });
		addAnnotation
		  (getSideBranch_At(),
		   source,
		   new String[]
		   {
			   "figure", "STATION",
			   "label", "Station of its mouth"
		   });
		addAnnotation
		  (getSideBranch_Diameter(),
		   source,
		   new String[]
		   {
			   "figure", "VESSEL_DIAMETER"
		   });
		addAnnotation
		  (getSideBranch_Depth(),
		   source,
		   new String[]
		   {
			   "figure", "LENGTH",
			   "label", "Depth to reach"
		   });
		addAnnotation
		  (getLesionMeasures_BendDegrees(),
		   source,
		   new String[]
		   {
			   "least", "0",
			   "most", "180",
			   "label", "Bend (degrees)"
		   });
		addAnnotation
		  (getLesionMeasures_OcclusionMonths(),
		   source,
		   new String[]
		   {
			   "least", "0",
			   "label", "Occluded for (months)"
		   });
		addAnnotation
		  (getLesionMeasures_CalciumDegrees(),
		   source,
		   new String[]
		   {
			   "least", "0",
			   "most", "360",
			   "label", "Angle of calcium (degrees)"
		   });
		addAnnotation
		  (getPatientFigures_Age(),
		   source,
		   new String[]
		   {
			   "label", "Age (years)"
		   });
		addAnnotation
		  (getPatientFigures_Creatinine(),
		   source,
		   new String[]
		   {
			   "label", "Serum creatinine"
		   });
		addAnnotation
		  (caseAimEClass,
		   source,
		   new String[]
		   {
			   "label", "Aim"
		   });
		addAnnotation
		  (getCaseAim_Objective(),
		   source,
		   new String[]
		   {
			   "label", "To be spared"
		   });
		addAnnotation
		  (getCaseAim_StoppingCost(),
		   source,
		   new String[]
		   {
			   "least", "0",
			   "label", "Cost of stopping"
		   });
		addAnnotation
		  (getCaseAim_TiersFirst(),
		   source,
		   new String[]
		   {
			   "label", "Lower hazard first"
		   });
		addAnnotation
		  (getCaseAim_OneNewRiskAStep(),
		   source,
		   new String[]
		   {
			   "label", "One new risk a step"
		   });
		addAnnotation
		  (getCaseAim_SameAxisDiscount(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "most", "1",
			   "label", "Discount on the same axis"
		   });
		addAnnotation
		  (getCaseAim_BudgetsLimit(),
		   source,
		   new String[]
		   {
			   "label", "Budget is a limit"
		   });
		addAnnotation
		  (loggedAttemptEClass,
		   source,
		   new String[]
		   {
			   "label", "Attempt"
		   });
		addAnnotation
		  (getLoggedAttempt_Move(),
		   source,
		   new String[]
		   {
			   "position", "first",
			   "label", "Technique or set-up"
		   });
		addAnnotation
		  (getLoggedAttempt_Outcome(),
		   source,
		   new String[]
		   {
			   "position", "after move"
		   });
		addAnnotation
		  (closingEClass,
		   source,
		   new String[]
		   {
			   "label", "Closing record"
		   });
		addAnnotation
		  (getClosing_Closed(),
		   source,
		   new String[]
		   {
			   "text", "date",
			   "label", "Closed on"
		   });
		addAnnotation
		  (getClosing_Hashes(),
		   source,
		   new String[]
		   {
			   "label", "Documents then"
		   });
		addAnnotation
		  (closedStepEClass,
		   source,
		   new String[]
		   {
			   "label", "Step"
		   });
		addAnnotation
		  (getClosedStep_Move(),
		   source,
		   new String[]
		   {
			   "label", "Technique or set-up"
		   });
		addAnnotation
		  (closedDeviceEClass,
		   source,
		   new String[]
		   {
			   "label", "Used device"
		   });
		addAnnotation
		  (getClosedDevice_Id(),
		   source,
		   new String[]
		   {
			   "label", "Device"
		   });
		addAnnotation
		  (getClosedDevice_Expiry(),
		   source,
		   new String[]
		   {
			   "text", "date"
		   });
		addAnnotation
		  (documentHashEClass,
		   source,
		   new String[]
		   {
			   "label", "Document"
		   });
		addAnnotation
		  (getDocumentHash_Sha256(),
		   source,
		   new String[]
		   {
			   "label", "SHA-256"
		   });
		addAnnotation
		  (shelfDocumentEClass,
		   source,
		   new String[]
		   {
			   "suffix", ".shelf.json",
			   "format", "ferrule.shelf",
			   "label", "Shelf"
		   });
		addAnnotation
		  (getShelfDocument_Libraries(),
		   source,
		   new String[]
		   {
			   "refers", "file .devices.json",
			   "label", "Device libraries"
		   });
		addAnnotation
		  (stockItemEClass,
		   source,
		   new String[]
		   {
			   "label", "Item"
		   });
		addAnnotation
		  (getStockItem_Id(),
		   source,
		   new String[]
		   {
			   "label", "Id"
		   });
		addAnnotation
		  (getStockItem_Code(),
		   source,
		   new String[]
		   {
			   "label", "Device identifier"
		   });
		addAnnotation
		  (getStockItem_ParLevel(),
		   source,
		   new String[]
		   {
			   "least", "0",
			   "label", "Par level"
		   });
		addAnnotation
		  (getStockItem_Price(),
		   source,
		   new String[]
		   {
			   "least", "0"
		   });
		addAnnotation
		  (stockLotEClass,
		   source,
		   new String[]
		   {
			   "label", "Lot"
		   });
		addAnnotation
		  (getStockLot_Expiry(),
		   source,
		   new String[]
		   {
			   "text", "date"
		   });
		addAnnotation
		  (getStockLot_Quantity(),
		   source,
		   new String[]
		   {
			   "least", "1"
		   });
		addAnnotation
		  (getStockLot_Serial(),
		   source,
		   new String[]
		   {
			   "label", "Serial number"
		   });
	}

} //ModelPackageImpl
