/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

import org.ferrule.model.Carrier;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Role;
import org.ferrule.model.RoleGoal;
import org.ferrule.model.RoleTask;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Role</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getKinds <em>Kinds</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getEquipment <em>Equipment</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getNominalDiameter <em>Nominal Diameter</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getNominalLength <em>Nominal Length</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getToVesselFrom <em>To Vessel From</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getToVesselTo <em>To Vessel To</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getTask <em>Task</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getCarrier <em>Carrier</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getGoal <em>Goal</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#getCount <em>Count</em>}</li>
 *   <li>{@link org.ferrule.model.impl.RoleImpl#isOnlyIfWireIsShort <em>Only If Wire Is Short</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RoleImpl extends SourcedImpl implements Role
{
	/**
	 * The default value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected static final String ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected String id = ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The cached value of the '{@link #getKinds() <em>Kinds</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKinds()
	 * @generated
	 * @ordered
	 */
	protected EList<DeviceKind> kinds;

	/**
	 * The cached value of the '{@link #getDevices() <em>Devices</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDevices()
	 * @generated
	 * @ordered
	 */
	protected EList<String> devices;

	/**
	 * The default value of the '{@link #getEquipment() <em>Equipment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEquipment()
	 * @generated
	 * @ordered
	 */
	protected static final String EQUIPMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEquipment() <em>Equipment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEquipment()
	 * @generated
	 * @ordered
	 */
	protected String equipment = EQUIPMENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getNominalDiameter() <em>Nominal Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNominalDiameter()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension NOMINAL_DIAMETER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNominalDiameter() <em>Nominal Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNominalDiameter()
	 * @generated
	 * @ordered
	 */
	protected Dimension nominalDiameter = NOMINAL_DIAMETER_EDEFAULT;

	/**
	 * The default value of the '{@link #getNominalLength() <em>Nominal Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNominalLength()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension NOMINAL_LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNominalLength() <em>Nominal Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNominalLength()
	 * @generated
	 * @ordered
	 */
	protected Dimension nominalLength = NOMINAL_LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getWire() <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWire()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension WIRE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWire() <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWire()
	 * @generated
	 * @ordered
	 */
	protected Dimension wire = WIRE_EDEFAULT;

	/**
	 * The default value of the '{@link #getToVesselFrom() <em>To Vessel From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToVesselFrom()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal TO_VESSEL_FROM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getToVesselFrom() <em>To Vessel From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToVesselFrom()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal toVesselFrom = TO_VESSEL_FROM_EDEFAULT;

	/**
	 * The default value of the '{@link #getToVesselTo() <em>To Vessel To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToVesselTo()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal TO_VESSEL_TO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getToVesselTo() <em>To Vessel To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToVesselTo()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal toVesselTo = TO_VESSEL_TO_EDEFAULT;

	/**
	 * The default value of the '{@link #getTask() <em>Task</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTask()
	 * @generated
	 * @ordered
	 */
	protected static final RoleTask TASK_EDEFAULT = RoleTask.PASS;

	/**
	 * The cached value of the '{@link #getTask() <em>Task</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTask()
	 * @generated
	 * @ordered
	 */
	protected RoleTask task = TASK_EDEFAULT;

	/**
	 * This is true if the Task attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean taskESet;

	/**
	 * The default value of the '{@link #getCarrier() <em>Carrier</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarrier()
	 * @generated
	 * @ordered
	 */
	protected static final Carrier CARRIER_EDEFAULT = Carrier.MAIN_WIRE;

	/**
	 * The cached value of the '{@link #getCarrier() <em>Carrier</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCarrier()
	 * @generated
	 * @ordered
	 */
	protected Carrier carrier = CARRIER_EDEFAULT;

	/**
	 * This is true if the Carrier attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean carrierESet;

	/**
	 * The default value of the '{@link #getGoal() <em>Goal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGoal()
	 * @generated
	 * @ordered
	 */
	protected static final RoleGoal GOAL_EDEFAULT = RoleGoal.LESION;

	/**
	 * The cached value of the '{@link #getGoal() <em>Goal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGoal()
	 * @generated
	 * @ordered
	 */
	protected RoleGoal goal = GOAL_EDEFAULT;

	/**
	 * This is true if the Goal attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean goalESet;

	/**
	 * The default value of the '{@link #getCount() <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCount()
	 * @generated
	 * @ordered
	 */
	protected static final int COUNT_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getCount() <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCount()
	 * @generated
	 * @ordered
	 */
	protected int count = COUNT_EDEFAULT;

	/**
	 * This is true if the Count attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean countESet;

	/**
	 * The default value of the '{@link #isOnlyIfWireIsShort() <em>Only If Wire Is Short</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOnlyIfWireIsShort()
	 * @generated
	 * @ordered
	 */
	protected static final boolean ONLY_IF_WIRE_IS_SHORT_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isOnlyIfWireIsShort() <em>Only If Wire Is Short</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOnlyIfWireIsShort()
	 * @generated
	 * @ordered
	 */
	protected boolean onlyIfWireIsShort = ONLY_IF_WIRE_IS_SHORT_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RoleImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return ModelPackage.Literals.ROLE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getId()
	{
		return id;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setId(String newId)
	{
		String oldId = id;
		id = newId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__ID, oldId, id));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName()
	{
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName)
	{
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DeviceKind> getKinds()
	{
		if (kinds == null)
		{
			kinds = new EDataTypeEList<DeviceKind>(DeviceKind.class, this, ModelPackage.ROLE__KINDS);
		}
		return kinds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getDevices()
	{
		if (devices == null)
		{
			devices = new EDataTypeEList<String>(String.class, this, ModelPackage.ROLE__DEVICES);
		}
		return devices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getEquipment()
	{
		return equipment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEquipment(String newEquipment)
	{
		String oldEquipment = equipment;
		equipment = newEquipment;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__EQUIPMENT, oldEquipment, equipment));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getNominalDiameter()
	{
		return nominalDiameter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNominalDiameter(Dimension newNominalDiameter)
	{
		Dimension oldNominalDiameter = nominalDiameter;
		nominalDiameter = newNominalDiameter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__NOMINAL_DIAMETER, oldNominalDiameter, nominalDiameter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getNominalLength()
	{
		return nominalLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNominalLength(Dimension newNominalLength)
	{
		Dimension oldNominalLength = nominalLength;
		nominalLength = newNominalLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__NOMINAL_LENGTH, oldNominalLength, nominalLength));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getWire()
	{
		return wire;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWire(Dimension newWire)
	{
		Dimension oldWire = wire;
		wire = newWire;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__WIRE, oldWire, wire));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getToVesselFrom()
	{
		return toVesselFrom;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToVesselFrom(BigDecimal newToVesselFrom)
	{
		BigDecimal oldToVesselFrom = toVesselFrom;
		toVesselFrom = newToVesselFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__TO_VESSEL_FROM, oldToVesselFrom, toVesselFrom));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getToVesselTo()
	{
		return toVesselTo;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToVesselTo(BigDecimal newToVesselTo)
	{
		BigDecimal oldToVesselTo = toVesselTo;
		toVesselTo = newToVesselTo;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__TO_VESSEL_TO, oldToVesselTo, toVesselTo));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RoleTask getTask()
	{
		return task;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTask(RoleTask newTask)
	{
		RoleTask oldTask = task;
		task = newTask == null ? TASK_EDEFAULT : newTask;
		boolean oldTaskESet = taskESet;
		taskESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__TASK, oldTask, task, !oldTaskESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetTask()
	{
		RoleTask oldTask = task;
		boolean oldTaskESet = taskESet;
		task = TASK_EDEFAULT;
		taskESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.ROLE__TASK, oldTask, TASK_EDEFAULT, oldTaskESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetTask()
	{
		return taskESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Carrier getCarrier()
	{
		return carrier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCarrier(Carrier newCarrier)
	{
		Carrier oldCarrier = carrier;
		carrier = newCarrier == null ? CARRIER_EDEFAULT : newCarrier;
		boolean oldCarrierESet = carrierESet;
		carrierESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__CARRIER, oldCarrier, carrier, !oldCarrierESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetCarrier()
	{
		Carrier oldCarrier = carrier;
		boolean oldCarrierESet = carrierESet;
		carrier = CARRIER_EDEFAULT;
		carrierESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.ROLE__CARRIER, oldCarrier, CARRIER_EDEFAULT, oldCarrierESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetCarrier()
	{
		return carrierESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RoleGoal getGoal()
	{
		return goal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGoal(RoleGoal newGoal)
	{
		RoleGoal oldGoal = goal;
		goal = newGoal == null ? GOAL_EDEFAULT : newGoal;
		boolean oldGoalESet = goalESet;
		goalESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__GOAL, oldGoal, goal, !oldGoalESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetGoal()
	{
		RoleGoal oldGoal = goal;
		boolean oldGoalESet = goalESet;
		goal = GOAL_EDEFAULT;
		goalESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.ROLE__GOAL, oldGoal, GOAL_EDEFAULT, oldGoalESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetGoal()
	{
		return goalESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getCount()
	{
		return count;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCount(int newCount)
	{
		int oldCount = count;
		count = newCount;
		boolean oldCountESet = countESet;
		countESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__COUNT, oldCount, count, !oldCountESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetCount()
	{
		int oldCount = count;
		boolean oldCountESet = countESet;
		count = COUNT_EDEFAULT;
		countESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.ROLE__COUNT, oldCount, COUNT_EDEFAULT, oldCountESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetCount()
	{
		return countESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isOnlyIfWireIsShort()
	{
		return onlyIfWireIsShort;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOnlyIfWireIsShort(boolean newOnlyIfWireIsShort)
	{
		boolean oldOnlyIfWireIsShort = onlyIfWireIsShort;
		onlyIfWireIsShort = newOnlyIfWireIsShort;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ROLE__ONLY_IF_WIRE_IS_SHORT, oldOnlyIfWireIsShort, onlyIfWireIsShort));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType)
	{
		switch (featureID)
		{
			case ModelPackage.ROLE__ID:
				return getId();
			case ModelPackage.ROLE__NAME:
				return getName();
			case ModelPackage.ROLE__KINDS:
				return getKinds();
			case ModelPackage.ROLE__DEVICES:
				return getDevices();
			case ModelPackage.ROLE__EQUIPMENT:
				return getEquipment();
			case ModelPackage.ROLE__NOMINAL_DIAMETER:
				return getNominalDiameter();
			case ModelPackage.ROLE__NOMINAL_LENGTH:
				return getNominalLength();
			case ModelPackage.ROLE__WIRE:
				return getWire();
			case ModelPackage.ROLE__TO_VESSEL_FROM:
				return getToVesselFrom();
			case ModelPackage.ROLE__TO_VESSEL_TO:
				return getToVesselTo();
			case ModelPackage.ROLE__TASK:
				return getTask();
			case ModelPackage.ROLE__CARRIER:
				return getCarrier();
			case ModelPackage.ROLE__GOAL:
				return getGoal();
			case ModelPackage.ROLE__COUNT:
				return getCount();
			case ModelPackage.ROLE__ONLY_IF_WIRE_IS_SHORT:
				return isOnlyIfWireIsShort();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.ROLE__ID:
				setId((String)newValue);
				return;
			case ModelPackage.ROLE__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.ROLE__KINDS:
				getKinds().clear();
				getKinds().addAll((Collection<? extends DeviceKind>)newValue);
				return;
			case ModelPackage.ROLE__DEVICES:
				getDevices().clear();
				getDevices().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.ROLE__EQUIPMENT:
				setEquipment((String)newValue);
				return;
			case ModelPackage.ROLE__NOMINAL_DIAMETER:
				setNominalDiameter((Dimension)newValue);
				return;
			case ModelPackage.ROLE__NOMINAL_LENGTH:
				setNominalLength((Dimension)newValue);
				return;
			case ModelPackage.ROLE__WIRE:
				setWire((Dimension)newValue);
				return;
			case ModelPackage.ROLE__TO_VESSEL_FROM:
				setToVesselFrom((BigDecimal)newValue);
				return;
			case ModelPackage.ROLE__TO_VESSEL_TO:
				setToVesselTo((BigDecimal)newValue);
				return;
			case ModelPackage.ROLE__TASK:
				setTask((RoleTask)newValue);
				return;
			case ModelPackage.ROLE__CARRIER:
				setCarrier((Carrier)newValue);
				return;
			case ModelPackage.ROLE__GOAL:
				setGoal((RoleGoal)newValue);
				return;
			case ModelPackage.ROLE__COUNT:
				setCount((Integer)newValue);
				return;
			case ModelPackage.ROLE__ONLY_IF_WIRE_IS_SHORT:
				setOnlyIfWireIsShort((Boolean)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.ROLE__ID:
				setId(ID_EDEFAULT);
				return;
			case ModelPackage.ROLE__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.ROLE__KINDS:
				getKinds().clear();
				return;
			case ModelPackage.ROLE__DEVICES:
				getDevices().clear();
				return;
			case ModelPackage.ROLE__EQUIPMENT:
				setEquipment(EQUIPMENT_EDEFAULT);
				return;
			case ModelPackage.ROLE__NOMINAL_DIAMETER:
				setNominalDiameter(NOMINAL_DIAMETER_EDEFAULT);
				return;
			case ModelPackage.ROLE__NOMINAL_LENGTH:
				setNominalLength(NOMINAL_LENGTH_EDEFAULT);
				return;
			case ModelPackage.ROLE__WIRE:
				setWire(WIRE_EDEFAULT);
				return;
			case ModelPackage.ROLE__TO_VESSEL_FROM:
				setToVesselFrom(TO_VESSEL_FROM_EDEFAULT);
				return;
			case ModelPackage.ROLE__TO_VESSEL_TO:
				setToVesselTo(TO_VESSEL_TO_EDEFAULT);
				return;
			case ModelPackage.ROLE__TASK:
				unsetTask();
				return;
			case ModelPackage.ROLE__CARRIER:
				unsetCarrier();
				return;
			case ModelPackage.ROLE__GOAL:
				unsetGoal();
				return;
			case ModelPackage.ROLE__COUNT:
				unsetCount();
				return;
			case ModelPackage.ROLE__ONLY_IF_WIRE_IS_SHORT:
				setOnlyIfWireIsShort(ONLY_IF_WIRE_IS_SHORT_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.ROLE__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case ModelPackage.ROLE__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.ROLE__KINDS:
				return kinds != null && !kinds.isEmpty();
			case ModelPackage.ROLE__DEVICES:
				return devices != null && !devices.isEmpty();
			case ModelPackage.ROLE__EQUIPMENT:
				return EQUIPMENT_EDEFAULT == null ? equipment != null : !EQUIPMENT_EDEFAULT.equals(equipment);
			case ModelPackage.ROLE__NOMINAL_DIAMETER:
				return NOMINAL_DIAMETER_EDEFAULT == null ? nominalDiameter != null : !NOMINAL_DIAMETER_EDEFAULT.equals(nominalDiameter);
			case ModelPackage.ROLE__NOMINAL_LENGTH:
				return NOMINAL_LENGTH_EDEFAULT == null ? nominalLength != null : !NOMINAL_LENGTH_EDEFAULT.equals(nominalLength);
			case ModelPackage.ROLE__WIRE:
				return WIRE_EDEFAULT == null ? wire != null : !WIRE_EDEFAULT.equals(wire);
			case ModelPackage.ROLE__TO_VESSEL_FROM:
				return TO_VESSEL_FROM_EDEFAULT == null ? toVesselFrom != null : !TO_VESSEL_FROM_EDEFAULT.equals(toVesselFrom);
			case ModelPackage.ROLE__TO_VESSEL_TO:
				return TO_VESSEL_TO_EDEFAULT == null ? toVesselTo != null : !TO_VESSEL_TO_EDEFAULT.equals(toVesselTo);
			case ModelPackage.ROLE__TASK:
				return isSetTask();
			case ModelPackage.ROLE__CARRIER:
				return isSetCarrier();
			case ModelPackage.ROLE__GOAL:
				return isSetGoal();
			case ModelPackage.ROLE__COUNT:
				return isSetCount();
			case ModelPackage.ROLE__ONLY_IF_WIRE_IS_SHORT:
				return onlyIfWireIsShort != ONLY_IF_WIRE_IS_SHORT_EDEFAULT;
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (id: ");
		result.append(id);
		result.append(", name: ");
		result.append(name);
		result.append(", kinds: ");
		result.append(kinds);
		result.append(", devices: ");
		result.append(devices);
		result.append(", equipment: ");
		result.append(equipment);
		result.append(", nominalDiameter: ");
		result.append(nominalDiameter);
		result.append(", nominalLength: ");
		result.append(nominalLength);
		result.append(", wire: ");
		result.append(wire);
		result.append(", toVesselFrom: ");
		result.append(toVesselFrom);
		result.append(", toVesselTo: ");
		result.append(toVesselTo);
		result.append(", task: ");
		if (taskESet) result.append(task); else result.append("<unset>");
		result.append(", carrier: ");
		if (carrierESet) result.append(carrier); else result.append("<unset>");
		result.append(", goal: ");
		if (goalESet) result.append(goal); else result.append("<unset>");
		result.append(", count: ");
		if (countESet) result.append(count); else result.append("<unset>");
		result.append(", onlyIfWireIsShort: ");
		result.append(onlyIfWireIsShort);
		result.append(')');
		return result.toString();
	}

} //RoleImpl
