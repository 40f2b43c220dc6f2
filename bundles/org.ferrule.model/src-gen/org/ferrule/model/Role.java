/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

import org.eclipse.emf.common.util.EList;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Role</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a technique or a set-up needs a device for, or several alike; or equipment that is no device.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Role#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getKinds <em>Kinds</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getEquipment <em>Equipment</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getNominalDiameter <em>Nominal Diameter</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getNominalLength <em>Nominal Length</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getToVesselFrom <em>To Vessel From</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getToVesselTo <em>To Vessel To</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getTask <em>Task</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getCarrier <em>Carrier</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getGoal <em>Goal</em>}</li>
 *   <li>{@link org.ferrule.model.Role#getCount <em>Count</em>}</li>
 *   <li>{@link org.ferrule.model.Role#isOnlyIfWireIsShort <em>Only If Wire Is Short</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getRole()
 * @model
 * @generated
 */
public interface Role extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of the role; unique in its technique or set-up.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.ferrule.model.ModelPackage#getRole_Id()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name that people read.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.ferrule.model.ModelPackage#getRole_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Kinds</b></em>' attribute list.
	 * The list contents are of type {@link org.ferrule.model.DeviceKind}.
	 * The literals are from the enumeration {@link org.ferrule.model.DeviceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The kinds of device that may play it; any when not given.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kinds</em>' attribute list.
	 * @see org.ferrule.model.DeviceKind
	 * @see org.ferrule.model.ModelPackage#getRole_Kinds()
	 * @model unique="false"
	 * @generated
	 */
	EList<DeviceKind> getKinds();

	/**
	 * Returns the value of the '<em><b>Devices</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The devices that alone may play it: id, or path!id where two libraries share an id; any when not given.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Devices</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getRole_Devices()
	 * @model unique="false"
	 * @generated
	 */
	EList<String> getDevices();

	/**
	 * Returns the value of the '<em><b>Equipment</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of what is no device but must be there, such as a console; the shelf knows it by the same word.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Equipment</em>' attribute.
	 * @see #setEquipment(String)
	 * @see org.ferrule.model.ModelPackage#getRole_Equipment()
	 * @model
	 * @generated
	 */
	String getEquipment();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getEquipment <em>Equipment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Equipment</em>' attribute.
	 * @see #getEquipment()
	 * @generated
	 */
	void setEquipment(String value);

	/**
	 * Returns the value of the '<em><b>Nominal Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The range of the nominal diameter of a balloon, a stent or a cutter, such as 1.0..1.5 mm; one end may be open.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Nominal Diameter</em>' attribute.
	 * @see #setNominalDiameter(Dimension)
	 * @see org.ferrule.model.ModelPackage#getRole_NominalDiameter()
	 * @model dataType="org.ferrule.model.Dimension"
	 * @generated
	 */
	Dimension getNominalDiameter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getNominalDiameter <em>Nominal Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Nominal Diameter</em>' attribute.
	 * @see #getNominalDiameter()
	 * @generated
	 */
	void setNominalDiameter(Dimension value);

	/**
	 * Returns the value of the '<em><b>Nominal Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The range of the nominal length of a balloon or a stent; one end may be open.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Nominal Length</em>' attribute.
	 * @see #setNominalLength(Dimension)
	 * @see org.ferrule.model.ModelPackage#getRole_NominalLength()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='LENGTH'"
	 * @generated
	 */
	Dimension getNominalLength();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getNominalLength <em>Nominal Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Nominal Length</em>' attribute.
	 * @see #getNominalLength()
	 * @generated
	 */
	void setNominalLength(Dimension value);

	/**
	 * Returns the value of the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The range of the diameter of a guidewire at its thickest; one end may be open.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wire</em>' attribute.
	 * @see #setWire(Dimension)
	 * @see org.ferrule.model.ModelPackage#getRole_Wire()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='WIRE_DIAMETER' label='Wire diameter'"
	 * @generated
	 */
	Dimension getWire();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getWire <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wire</em>' attribute.
	 * @see #getWire()
	 * @generated
	 */
	void setWire(Dimension value);

	/**
	 * Returns the value of the '<em><b>To Vessel From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The least nominal diameter, as a share of the vessel's, or of the branch's where the goal is the branch.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To Vessel From</em>' attribute.
	 * @see #setToVesselFrom(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getRole_ToVesselFrom()
	 * @model annotation="https://ferrule.invalid/annotation/1 above='0' label='To the vessel, from'"
	 * @generated
	 */
	BigDecimal getToVesselFrom();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getToVesselFrom <em>To Vessel From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To Vessel From</em>' attribute.
	 * @see #getToVesselFrom()
	 * @generated
	 */
	void setToVesselFrom(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>To Vessel To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The greatest nominal diameter, as a share of the same.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To Vessel To</em>' attribute.
	 * @see #setToVesselTo(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getRole_ToVesselTo()
	 * @model annotation="https://ferrule.invalid/annotation/1 above='0' label='To the vessel, to'"
	 * @generated
	 */
	BigDecimal getToVesselTo();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getToVesselTo <em>To Vessel To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To Vessel To</em>' attribute.
	 * @see #getToVesselTo()
	 * @generated
	 */
	void setToVesselTo(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Task</b></em>' attribute.
	 * The default value is <code>"pass"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.RoleTask}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the device has to do.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Task</em>' attribute.
	 * @see org.ferrule.model.RoleTask
	 * @see #isSetTask()
	 * @see #unsetTask()
	 * @see #setTask(RoleTask)
	 * @see org.ferrule.model.ModelPackage#getRole_Task()
	 * @model default="pass" unsettable="true"
	 * @generated
	 */
	RoleTask getTask();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getTask <em>Task</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Task</em>' attribute.
	 * @see org.ferrule.model.RoleTask
	 * @see #isSetTask()
	 * @see #unsetTask()
	 * @see #getTask()
	 * @generated
	 */
	void setTask(RoleTask value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Role#getTask <em>Task</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetTask()
	 * @see #getTask()
	 * @see #setTask(RoleTask)
	 * @generated
	 */
	void unsetTask();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Role#getTask <em>Task</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Task</em>' attribute is set.
	 * @see #unsetTask()
	 * @see #getTask()
	 * @see #setTask(RoleTask)
	 * @generated
	 */
	boolean isSetTask();

	/**
	 * Returns the value of the '<em><b>Carrier</b></em>' attribute.
	 * The default value is <code>"mainWire"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.Carrier}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it runs on.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Carrier</em>' attribute.
	 * @see org.ferrule.model.Carrier
	 * @see #isSetCarrier()
	 * @see #unsetCarrier()
	 * @see #setCarrier(Carrier)
	 * @see org.ferrule.model.ModelPackage#getRole_Carrier()
	 * @model default="mainWire" unsettable="true"
	 * @generated
	 */
	Carrier getCarrier();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getCarrier <em>Carrier</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Carrier</em>' attribute.
	 * @see org.ferrule.model.Carrier
	 * @see #isSetCarrier()
	 * @see #unsetCarrier()
	 * @see #getCarrier()
	 * @generated
	 */
	void setCarrier(Carrier value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Role#getCarrier <em>Carrier</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetCarrier()
	 * @see #getCarrier()
	 * @see #setCarrier(Carrier)
	 * @generated
	 */
	void unsetCarrier();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Role#getCarrier <em>Carrier</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Carrier</em>' attribute is set.
	 * @see #unsetCarrier()
	 * @see #getCarrier()
	 * @see #setCarrier(Carrier)
	 * @generated
	 */
	boolean isSetCarrier();

	/**
	 * Returns the value of the '<em><b>Goal</b></em>' attribute.
	 * The default value is <code>"lesion"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.RoleGoal}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far it has to come.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Goal</em>' attribute.
	 * @see org.ferrule.model.RoleGoal
	 * @see #isSetGoal()
	 * @see #unsetGoal()
	 * @see #setGoal(RoleGoal)
	 * @see org.ferrule.model.ModelPackage#getRole_Goal()
	 * @model default="lesion" unsettable="true"
	 * @generated
	 */
	RoleGoal getGoal();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getGoal <em>Goal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Goal</em>' attribute.
	 * @see org.ferrule.model.RoleGoal
	 * @see #isSetGoal()
	 * @see #unsetGoal()
	 * @see #getGoal()
	 * @generated
	 */
	void setGoal(RoleGoal value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Role#getGoal <em>Goal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetGoal()
	 * @see #getGoal()
	 * @see #setGoal(RoleGoal)
	 * @generated
	 */
	void unsetGoal();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Role#getGoal <em>Goal</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Goal</em>' attribute is set.
	 * @see #unsetGoal()
	 * @see #getGoal()
	 * @see #setGoal(RoleGoal)
	 * @generated
	 */
	boolean isSetGoal();

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many are used up.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #isSetCount()
	 * @see #unsetCount()
	 * @see #setCount(int)
	 * @see org.ferrule.model.ModelPackage#getRole_Count()
	 * @model default="1" unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 least='1'"
	 * @generated
	 */
	int getCount();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #isSetCount()
	 * @see #unsetCount()
	 * @see #getCount()
	 * @generated
	 */
	void setCount(int value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Role#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetCount()
	 * @see #getCount()
	 * @see #setCount(int)
	 * @generated
	 */
	void unsetCount();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Role#getCount <em>Count</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Count</em>' attribute is set.
	 * @see #unsetCount()
	 * @see #getCount()
	 * @see #setCount(int)
	 * @generated
	 */
	boolean isSetCount();

	/**
	 * Returns the value of the '<em><b>Only If Wire Is Short</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it is needed only where the main wire is too short to exchange over it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Only If Wire Is Short</em>' attribute.
	 * @see #setOnlyIfWireIsShort(boolean)
	 * @see org.ferrule.model.ModelPackage#getRole_OnlyIfWireIsShort()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Only if the wire is short'"
	 * @generated
	 */
	boolean isOnlyIfWireIsShort();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Role#isOnlyIfWireIsShort <em>Only If Wire Is Short</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Only If Wire Is Short</em>' attribute.
	 * @see #isOnlyIfWireIsShort()
	 * @generated
	 */
	void setOnlyIfWireIsShort(boolean value);

} // Role
