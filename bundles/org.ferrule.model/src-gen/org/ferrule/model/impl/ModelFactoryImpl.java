/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

import org.ferrule.model.*;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Offset;
import org.ferrule.quantity.Pressure;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class ModelFactoryImpl extends EFactoryImpl implements ModelFactory
{
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static ModelFactory init()
	{
		try
		{
			ModelFactory theModelFactory = (ModelFactory)EPackage.Registry.INSTANCE.getEFactory(ModelPackage.eNS_URI);
			if (theModelFactory != null)
			{
				return theModelFactory;
			}
		}
		catch (Exception exception)
		{
			EcorePlugin.INSTANCE.log(exception);
		}
		return new ModelFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ModelFactoryImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass)
	{
		switch (eClass.getClassifierID())
		{
			case ModelPackage.EXTRA_KEY: return createExtraKey();
			case ModelPackage.SOURCE: return createSource();
			case ModelPackage.DEVICE_LIBRARY: return createDeviceLibrary();
			case ModelPackage.DEVICE_LINE: return createDeviceLine();
			case ModelPackage.DEVICE: return createDevice();
			case ModelPackage.SHAFT_SECTION: return createShaftSection();
			case ModelPackage.OVAL: return createOval();
			case ModelPackage.DISC: return createDisc();
			case ModelPackage.LUMEN: return createLumen();
			case ModelPackage.LUMEN_SECTION: return createLumenSection();
			case ModelPackage.MARKER: return createMarker();
			case ModelPackage.BALLOON: return createBalloon();
			case ModelPackage.COMPLIANCE_ROW: return createComplianceRow();
			case ModelPackage.STENT: return createStent();
			case ModelPackage.CUTTER: return createCutter();
			case ModelPackage.TRANSDUCER: return createTransducer();
			case ModelPackage.WIRE_TRAITS: return createWireTraits();
			case ModelPackage.CLAIM: return createClaim();
			case ModelPackage.BENCH_RESULT: return createBenchResult();
			case ModelPackage.RULE_SET: return createRuleSet();
			case ModelPackage.SPAN: return createSpan();
			case ModelPackage.CLEARANCE_RULE: return createClearanceRule();
			case ModelPackage.AFTER_USE_RULE: return createAfterUseRule();
			case ModelPackage.FLOW_LIMIT: return createFlowLimit();
			case ModelPackage.ALLOWANCE: return createAllowance();
			case ModelPackage.RATIO_BAND: return createRatioBand();
			case ModelPackage.CHANCE_LIMIT: return createChanceLimit();
			case ModelPackage.FIT_CHART: return createFitChart();
			case ModelPackage.SIGN_OFF: return createSignOff();
			case ModelPackage.SIGNED_ROW: return createSignedRow();
			case ModelPackage.AXIS: return createAxis();
			case ModelPackage.CONDITIONS: return createConditions();
			case ModelPackage.OCCUPANT: return createOccupant();
			case ModelPackage.THROUGH_EXTENSION: return createThroughExtension();
			case ModelPackage.BEND: return createBend();
			case ModelPackage.VESSEL_PATH: return createVesselPath();
			case ModelPackage.VESSEL_SEGMENT: return createVesselSegment();
			case ModelPackage.LESION: return createLesion();
			case ModelPackage.PAPER: return createPaper();
			case ModelPackage.TECHNIQUE_LIBRARY: return createTechniqueLibrary();
			case ModelPackage.FACT: return createFact();
			case ModelPackage.SETUP: return createSetup();
			case ModelPackage.TECHNIQUE: return createTechnique();
			case ModelPackage.ROLE: return createRole();
			case ModelPackage.NEED: return createNeed();
			case ModelPackage.PLACEMENT: return createPlacement();
			case ModelPackage.PLANNED_TRY: return createPlannedTry();
			case ModelPackage.PRIOR: return createPrior();
			case ModelPackage.PUBLISHED: return createPublished();
			case ModelPackage.STOP_RULE: return createStopRule();
			case ModelPackage.CASE_DOCUMENT: return createCaseDocument();
			case ModelPackage.ACCESS: return createAccess();
			case ModelPackage.SYSTEM_IN_PLACE: return createSystemInPlace();
			case ModelPackage.SIDE_BRANCH: return createSideBranch();
			case ModelPackage.STATED_FACT: return createStatedFact();
			case ModelPackage.LESION_MEASURES: return createLesionMeasures();
			case ModelPackage.PATIENT_FIGURES: return createPatientFigures();
			case ModelPackage.CASE_AIM: return createCaseAim();
			case ModelPackage.COSTS: return createCosts();
			case ModelPackage.LOGGED_ATTEMPT: return createLoggedAttempt();
			case ModelPackage.USED_UNIT: return createUsedUnit();
			case ModelPackage.CLOSING: return createClosing();
			case ModelPackage.CLOSED_STEP: return createClosedStep();
			case ModelPackage.CLOSED_DEVICE: return createClosedDevice();
			case ModelPackage.DOCUMENT_HASH: return createDocumentHash();
			case ModelPackage.SHELF_DOCUMENT: return createShelfDocument();
			case ModelPackage.STOCK_ITEM: return createStockItem();
			case ModelPackage.STOCK_LOT: return createStockLot();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue)
	{
		switch (eDataType.getClassifierID())
		{
			case ModelPackage.SOURCE_KIND:
				return createSourceKindFromString(eDataType, initialValue);
			case ModelPackage.DEVICE_KIND:
				return createDeviceKindFromString(eDataType, initialValue);
			case ModelPackage.LUMEN_USE:
				return createLumenUseFromString(eDataType, initialValue);
			case ModelPackage.LUMEN_OPENING:
				return createLumenOpeningFromString(eDataType, initialValue);
			case ModelPackage.CUTTER_TYPE:
				return createCutterTypeFromString(eDataType, initialValue);
			case ModelPackage.TRANSDUCER_TYPE:
				return createTransducerTypeFromString(eDataType, initialValue);
			case ModelPackage.CLAIM_TYPE:
				return createClaimTypeFromString(eDataType, initialValue);
			case ModelPackage.PHASE:
				return createPhaseFromString(eDataType, initialValue);
			case ModelPackage.BENCH_OUTCOME:
				return createBenchOutcomeFromString(eDataType, initialValue);
			case ModelPackage.FIGURE_CLASS:
				return createFigureClassFromString(eDataType, initialValue);
			case ModelPackage.FLOW_USE:
				return createFlowUseFromString(eDataType, initialValue);
			case ModelPackage.ALLOWANCE_PURPOSE:
				return createAllowancePurposeFromString(eDataType, initialValue);
			case ModelPackage.RATIO_USE:
				return createRatioUseFromString(eDataType, initialValue);
			case ModelPackage.GROUPING:
				return createGroupingFromString(eDataType, initialValue);
			case ModelPackage.SORTING:
				return createSortingFromString(eDataType, initialValue);
			case ModelPackage.DIRECTION:
				return createDirectionFromString(eDataType, initialValue);
			case ModelPackage.BEND_PLACE:
				return createBendPlaceFromString(eDataType, initialValue);
			case ModelPackage.PAPER_SIZE:
				return createPaperSizeFromString(eDataType, initialValue);
			case ModelPackage.ORIENTATION:
				return createOrientationFromString(eDataType, initialValue);
			case ModelPackage.PRIMARY_UNIT:
				return createPrimaryUnitFromString(eDataType, initialValue);
			case ModelPackage.SHOWN_NUMBERS:
				return createShownNumbersFromString(eDataType, initialValue);
			case ModelPackage.TECHNIQUE_AXIS:
				return createTechniqueAxisFromString(eDataType, initialValue);
			case ModelPackage.HAZARD:
				return createHazardFromString(eDataType, initialValue);
			case ModelPackage.ROLE_TASK:
				return createRoleTaskFromString(eDataType, initialValue);
			case ModelPackage.CARRIER:
				return createCarrierFromString(eDataType, initialValue);
			case ModelPackage.ROLE_GOAL:
				return createRoleGoalFromString(eDataType, initialValue);
			case ModelPackage.SYSTEM_SLOT:
				return createSystemSlotFromString(eDataType, initialValue);
			case ModelPackage.RESOURCE_KIND:
				return createResourceKindFromString(eDataType, initialValue);
			case ModelPackage.ATTEMPT_OUTCOME:
				return createAttemptOutcomeFromString(eDataType, initialValue);
			case ModelPackage.CASE_END:
				return createCaseEndFromString(eDataType, initialValue);
			case ModelPackage.SEX:
				return createSexFromString(eDataType, initialValue);
			case ModelPackage.LESION_TRAIT:
				return createLesionTraitFromString(eDataType, initialValue);
			case ModelPackage.DIMENSION:
				return createDimensionFromString(eDataType, initialValue);
			case ModelPackage.PRESSURE:
				return createPressureFromString(eDataType, initialValue);
			case ModelPackage.OFFSET:
				return createOffsetFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue)
	{
		switch (eDataType.getClassifierID())
		{
			case ModelPackage.SOURCE_KIND:
				return convertSourceKindToString(eDataType, instanceValue);
			case ModelPackage.DEVICE_KIND:
				return convertDeviceKindToString(eDataType, instanceValue);
			case ModelPackage.LUMEN_USE:
				return convertLumenUseToString(eDataType, instanceValue);
			case ModelPackage.LUMEN_OPENING:
				return convertLumenOpeningToString(eDataType, instanceValue);
			case ModelPackage.CUTTER_TYPE:
				return convertCutterTypeToString(eDataType, instanceValue);
			case ModelPackage.TRANSDUCER_TYPE:
				return convertTransducerTypeToString(eDataType, instanceValue);
			case ModelPackage.CLAIM_TYPE:
				return convertClaimTypeToString(eDataType, instanceValue);
			case ModelPackage.PHASE:
				return convertPhaseToString(eDataType, instanceValue);
			case ModelPackage.BENCH_OUTCOME:
				return convertBenchOutcomeToString(eDataType, instanceValue);
			case ModelPackage.FIGURE_CLASS:
				return convertFigureClassToString(eDataType, instanceValue);
			case ModelPackage.FLOW_USE:
				return convertFlowUseToString(eDataType, instanceValue);
			case ModelPackage.ALLOWANCE_PURPOSE:
				return convertAllowancePurposeToString(eDataType, instanceValue);
			case ModelPackage.RATIO_USE:
				return convertRatioUseToString(eDataType, instanceValue);
			case ModelPackage.GROUPING:
				return convertGroupingToString(eDataType, instanceValue);
			case ModelPackage.SORTING:
				return convertSortingToString(eDataType, instanceValue);
			case ModelPackage.DIRECTION:
				return convertDirectionToString(eDataType, instanceValue);
			case ModelPackage.BEND_PLACE:
				return convertBendPlaceToString(eDataType, instanceValue);
			case ModelPackage.PAPER_SIZE:
				return convertPaperSizeToString(eDataType, instanceValue);
			case ModelPackage.ORIENTATION:
				return convertOrientationToString(eDataType, instanceValue);
			case ModelPackage.PRIMARY_UNIT:
				return convertPrimaryUnitToString(eDataType, instanceValue);
			case ModelPackage.SHOWN_NUMBERS:
				return convertShownNumbersToString(eDataType, instanceValue);
			case ModelPackage.TECHNIQUE_AXIS:
				return convertTechniqueAxisToString(eDataType, instanceValue);
			case ModelPackage.HAZARD:
				return convertHazardToString(eDataType, instanceValue);
			case ModelPackage.ROLE_TASK:
				return convertRoleTaskToString(eDataType, instanceValue);
			case ModelPackage.CARRIER:
				return convertCarrierToString(eDataType, instanceValue);
			case ModelPackage.ROLE_GOAL:
				return convertRoleGoalToString(eDataType, instanceValue);
			case ModelPackage.SYSTEM_SLOT:
				return convertSystemSlotToString(eDataType, instanceValue);
			case ModelPackage.RESOURCE_KIND:
				return convertResourceKindToString(eDataType, instanceValue);
			case ModelPackage.ATTEMPT_OUTCOME:
				return convertAttemptOutcomeToString(eDataType, instanceValue);
			case ModelPackage.CASE_END:
				return convertCaseEndToString(eDataType, instanceValue);
			case ModelPackage.SEX:
				return convertSexToString(eDataType, instanceValue);
			case ModelPackage.LESION_TRAIT:
				return convertLesionTraitToString(eDataType, instanceValue);
			case ModelPackage.DIMENSION:
				return convertDimensionToString(eDataType, instanceValue);
			case ModelPackage.PRESSURE:
				return convertPressureToString(eDataType, instanceValue);
			case ModelPackage.OFFSET:
				return convertOffsetToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExtraKey createExtraKey()
	{
		ExtraKeyImpl extraKey = new ExtraKeyImpl();
		return extraKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Source createSource()
	{
		SourceImpl source = new SourceImpl();
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DeviceLibrary createDeviceLibrary()
	{
		DeviceLibraryImpl deviceLibrary = new DeviceLibraryImpl();
		return deviceLibrary;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DeviceLine createDeviceLine()
	{
		DeviceLineImpl deviceLine = new DeviceLineImpl();
		return deviceLine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Device createDevice()
	{
		DeviceImpl device = new DeviceImpl();
		return device;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShaftSection createShaftSection()
	{
		ShaftSectionImpl shaftSection = new ShaftSectionImpl();
		return shaftSection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Oval createOval()
	{
		OvalImpl oval = new OvalImpl();
		return oval;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Disc createDisc()
	{
		DiscImpl disc = new DiscImpl();
		return disc;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Lumen createLumen()
	{
		LumenImpl lumen = new LumenImpl();
		return lumen;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LumenSection createLumenSection()
	{
		LumenSectionImpl lumenSection = new LumenSectionImpl();
		return lumenSection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Marker createMarker()
	{
		MarkerImpl marker = new MarkerImpl();
		return marker;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Balloon createBalloon()
	{
		BalloonImpl balloon = new BalloonImpl();
		return balloon;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ComplianceRow createComplianceRow()
	{
		ComplianceRowImpl complianceRow = new ComplianceRowImpl();
		return complianceRow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Stent createStent()
	{
		StentImpl stent = new StentImpl();
		return stent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Cutter createCutter()
	{
		CutterImpl cutter = new CutterImpl();
		return cutter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Transducer createTransducer()
	{
		TransducerImpl transducer = new TransducerImpl();
		return transducer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WireTraits createWireTraits()
	{
		WireTraitsImpl wireTraits = new WireTraitsImpl();
		return wireTraits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Claim createClaim()
	{
		ClaimImpl claim = new ClaimImpl();
		return claim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BenchResult createBenchResult()
	{
		BenchResultImpl benchResult = new BenchResultImpl();
		return benchResult;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RuleSet createRuleSet()
	{
		RuleSetImpl ruleSet = new RuleSetImpl();
		return ruleSet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Span createSpan()
	{
		SpanImpl span = new SpanImpl();
		return span;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ClearanceRule createClearanceRule()
	{
		ClearanceRuleImpl clearanceRule = new ClearanceRuleImpl();
		return clearanceRule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AfterUseRule createAfterUseRule()
	{
		AfterUseRuleImpl afterUseRule = new AfterUseRuleImpl();
		return afterUseRule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FlowLimit createFlowLimit()
	{
		FlowLimitImpl flowLimit = new FlowLimitImpl();
		return flowLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Allowance createAllowance()
	{
		AllowanceImpl allowance = new AllowanceImpl();
		return allowance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RatioBand createRatioBand()
	{
		RatioBandImpl ratioBand = new RatioBandImpl();
		return ratioBand;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ChanceLimit createChanceLimit()
	{
		ChanceLimitImpl chanceLimit = new ChanceLimitImpl();
		return chanceLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FitChart createFitChart()
	{
		FitChartImpl fitChart = new FitChartImpl();
		return fitChart;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SignOff createSignOff()
	{
		SignOffImpl signOff = new SignOffImpl();
		return signOff;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SignedRow createSignedRow()
	{
		SignedRowImpl signedRow = new SignedRowImpl();
		return signedRow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Axis createAxis()
	{
		AxisImpl axis = new AxisImpl();
		return axis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Conditions createConditions()
	{
		ConditionsImpl conditions = new ConditionsImpl();
		return conditions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Occupant createOccupant()
	{
		OccupantImpl occupant = new OccupantImpl();
		return occupant;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ThroughExtension createThroughExtension()
	{
		ThroughExtensionImpl throughExtension = new ThroughExtensionImpl();
		return throughExtension;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Bend createBend()
	{
		BendImpl bend = new BendImpl();
		return bend;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VesselPath createVesselPath()
	{
		VesselPathImpl vesselPath = new VesselPathImpl();
		return vesselPath;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VesselSegment createVesselSegment()
	{
		VesselSegmentImpl vesselSegment = new VesselSegmentImpl();
		return vesselSegment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Lesion createLesion()
	{
		LesionImpl lesion = new LesionImpl();
		return lesion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Paper createPaper()
	{
		PaperImpl paper = new PaperImpl();
		return paper;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TechniqueLibrary createTechniqueLibrary()
	{
		TechniqueLibraryImpl techniqueLibrary = new TechniqueLibraryImpl();
		return techniqueLibrary;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Fact createFact()
	{
		FactImpl fact = new FactImpl();
		return fact;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Setup createSetup()
	{
		SetupImpl setup = new SetupImpl();
		return setup;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Technique createTechnique()
	{
		TechniqueImpl technique = new TechniqueImpl();
		return technique;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Role createRole()
	{
		RoleImpl role = new RoleImpl();
		return role;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Need createNeed()
	{
		NeedImpl need = new NeedImpl();
		return need;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Placement createPlacement()
	{
		PlacementImpl placement = new PlacementImpl();
		return placement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PlannedTry createPlannedTry()
	{
		PlannedTryImpl plannedTry = new PlannedTryImpl();
		return plannedTry;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Prior createPrior()
	{
		PriorImpl prior = new PriorImpl();
		return prior;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Published createPublished()
	{
		PublishedImpl published = new PublishedImpl();
		return published;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StopRule createStopRule()
	{
		StopRuleImpl stopRule = new StopRuleImpl();
		return stopRule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CaseDocument createCaseDocument()
	{
		CaseDocumentImpl caseDocument = new CaseDocumentImpl();
		return caseDocument;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Access createAccess()
	{
		AccessImpl access = new AccessImpl();
		return access;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SystemInPlace createSystemInPlace()
	{
		SystemInPlaceImpl systemInPlace = new SystemInPlaceImpl();
		return systemInPlace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SideBranch createSideBranch()
	{
		SideBranchImpl sideBranch = new SideBranchImpl();
		return sideBranch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StatedFact createStatedFact()
	{
		StatedFactImpl statedFact = new StatedFactImpl();
		return statedFact;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LesionMeasures createLesionMeasures()
	{
		LesionMeasuresImpl lesionMeasures = new LesionMeasuresImpl();
		return lesionMeasures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PatientFigures createPatientFigures()
	{
		PatientFiguresImpl patientFigures = new PatientFiguresImpl();
		return patientFigures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CaseAim createCaseAim()
	{
		CaseAimImpl caseAim = new CaseAimImpl();
		return caseAim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Costs createCosts()
	{
		CostsImpl costs = new CostsImpl();
		return costs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LoggedAttempt createLoggedAttempt()
	{
		LoggedAttemptImpl loggedAttempt = new LoggedAttemptImpl();
		return loggedAttempt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UsedUnit createUsedUnit()
	{
		UsedUnitImpl usedUnit = new UsedUnitImpl();
		return usedUnit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Closing createClosing()
	{
		ClosingImpl closing = new ClosingImpl();
		return closing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ClosedStep createClosedStep()
	{
		ClosedStepImpl closedStep = new ClosedStepImpl();
		return closedStep;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ClosedDevice createClosedDevice()
	{
		ClosedDeviceImpl closedDevice = new ClosedDeviceImpl();
		return closedDevice;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DocumentHash createDocumentHash()
	{
		DocumentHashImpl documentHash = new DocumentHashImpl();
		return documentHash;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShelfDocument createShelfDocument()
	{
		ShelfDocumentImpl shelfDocument = new ShelfDocumentImpl();
		return shelfDocument;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StockItem createStockItem()
	{
		StockItemImpl stockItem = new StockItemImpl();
		return stockItem;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StockLot createStockLot()
	{
		StockLotImpl stockLot = new StockLotImpl();
		return stockLot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SourceKind createSourceKindFromString(EDataType eDataType, String initialValue)
	{
		SourceKind result = SourceKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSourceKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public DeviceKind createDeviceKindFromString(EDataType eDataType, String initialValue)
	{
		DeviceKind result = DeviceKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDeviceKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LumenUse createLumenUseFromString(EDataType eDataType, String initialValue)
	{
		LumenUse result = LumenUse.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLumenUseToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LumenOpening createLumenOpeningFromString(EDataType eDataType, String initialValue)
	{
		LumenOpening result = LumenOpening.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLumenOpeningToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CutterType createCutterTypeFromString(EDataType eDataType, String initialValue)
	{
		CutterType result = CutterType.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCutterTypeToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TransducerType createTransducerTypeFromString(EDataType eDataType, String initialValue)
	{
		TransducerType result = TransducerType.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTransducerTypeToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ClaimType createClaimTypeFromString(EDataType eDataType, String initialValue)
	{
		ClaimType result = ClaimType.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertClaimTypeToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Phase createPhaseFromString(EDataType eDataType, String initialValue)
	{
		Phase result = Phase.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPhaseToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BenchOutcome createBenchOutcomeFromString(EDataType eDataType, String initialValue)
	{
		BenchOutcome result = BenchOutcome.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBenchOutcomeToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FigureClass createFigureClassFromString(EDataType eDataType, String initialValue)
	{
		FigureClass result = FigureClass.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFigureClassToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FlowUse createFlowUseFromString(EDataType eDataType, String initialValue)
	{
		FlowUse result = FlowUse.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFlowUseToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public AllowancePurpose createAllowancePurposeFromString(EDataType eDataType, String initialValue)
	{
		AllowancePurpose result = AllowancePurpose.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAllowancePurposeToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RatioUse createRatioUseFromString(EDataType eDataType, String initialValue)
	{
		RatioUse result = RatioUse.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRatioUseToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Grouping createGroupingFromString(EDataType eDataType, String initialValue)
	{
		Grouping result = Grouping.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGroupingToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Sorting createSortingFromString(EDataType eDataType, String initialValue)
	{
		Sorting result = Sorting.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSortingToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Direction createDirectionFromString(EDataType eDataType, String initialValue)
	{
		Direction result = Direction.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDirectionToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BendPlace createBendPlaceFromString(EDataType eDataType, String initialValue)
	{
		BendPlace result = BendPlace.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBendPlaceToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PaperSize createPaperSizeFromString(EDataType eDataType, String initialValue)
	{
		PaperSize result = PaperSize.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPaperSizeToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Orientation createOrientationFromString(EDataType eDataType, String initialValue)
	{
		Orientation result = Orientation.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOrientationToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PrimaryUnit createPrimaryUnitFromString(EDataType eDataType, String initialValue)
	{
		PrimaryUnit result = PrimaryUnit.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPrimaryUnitToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ShownNumbers createShownNumbersFromString(EDataType eDataType, String initialValue)
	{
		ShownNumbers result = ShownNumbers.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertShownNumbersToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TechniqueAxis createTechniqueAxisFromString(EDataType eDataType, String initialValue)
	{
		TechniqueAxis result = TechniqueAxis.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTechniqueAxisToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Hazard createHazardFromString(EDataType eDataType, String initialValue)
	{
		Hazard result = Hazard.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHazardToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RoleTask createRoleTaskFromString(EDataType eDataType, String initialValue)
	{
		RoleTask result = RoleTask.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRoleTaskToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Carrier createCarrierFromString(EDataType eDataType, String initialValue)
	{
		Carrier result = Carrier.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCarrierToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RoleGoal createRoleGoalFromString(EDataType eDataType, String initialValue)
	{
		RoleGoal result = RoleGoal.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRoleGoalToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SystemSlot createSystemSlotFromString(EDataType eDataType, String initialValue)
	{
		SystemSlot result = SystemSlot.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSystemSlotToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ResourceKind createResourceKindFromString(EDataType eDataType, String initialValue)
	{
		ResourceKind result = ResourceKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertResourceKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public AttemptOutcome createAttemptOutcomeFromString(EDataType eDataType, String initialValue)
	{
		AttemptOutcome result = AttemptOutcome.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAttemptOutcomeToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CaseEnd createCaseEndFromString(EDataType eDataType, String initialValue)
	{
		CaseEnd result = CaseEnd.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCaseEndToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Sex createSexFromString(EDataType eDataType, String initialValue)
	{
		Sex result = Sex.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSexToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LesionTrait createLesionTraitFromString(EDataType eDataType, String initialValue)
	{
		LesionTrait result = LesionTrait.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLesionTraitToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Dimension createDimension(final String it)
	{
		return it == null ? null : org.ferrule.quantity.Dimension.lenient(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Dimension createDimensionFromString(EDataType eDataType, String initialValue)
	{
		return createDimension(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDimension(final Dimension it)
	{
		return it == null ? null : it.text();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDimensionToString(EDataType eDataType, Object instanceValue)
	{
		return convertDimension((Dimension)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Pressure createPressure(final String it)
	{
		return it == null ? null : org.ferrule.quantity.Pressure.lenient(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Pressure createPressureFromString(EDataType eDataType, String initialValue)
	{
		return createPressure(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPressure(final Pressure it)
	{
		return it == null ? null : it.text();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPressureToString(EDataType eDataType, Object instanceValue)
	{
		return convertPressure((Pressure)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Offset createOffset(final String it)
	{
		return it == null ? null : org.ferrule.quantity.Offset.lenient(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Offset createOffsetFromString(EDataType eDataType, String initialValue)
	{
		return createOffset(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOffset(final Offset it)
	{
		return it == null ? null : it.text();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOffsetToString(EDataType eDataType, Object instanceValue)
	{
		return convertOffset((Offset)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ModelPackage getModelPackage()
	{
		return (ModelPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static ModelPackage getPackage()
	{
		return ModelPackage.eINSTANCE;
	}

} //ModelFactoryImpl
