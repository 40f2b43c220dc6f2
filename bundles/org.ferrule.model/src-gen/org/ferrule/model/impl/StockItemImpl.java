/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.StockItem;
import org.ferrule.model.StockLot;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stock Item</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.StockItemImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StockItemImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StockItemImpl#getDevice <em>Device</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StockItemImpl#getEquipment <em>Equipment</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StockItemImpl#getCode <em>Code</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StockItemImpl#getParLevel <em>Par Level</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StockItemImpl#getPrice <em>Price</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StockItemImpl#getLots <em>Lots</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StockItemImpl extends SourcedImpl implements StockItem
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
	 * The default value of the '{@link #getDevice() <em>Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDevice()
	 * @generated
	 * @ordered
	 */
	protected static final String DEVICE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDevice() <em>Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDevice()
	 * @generated
	 * @ordered
	 */
	protected String device = DEVICE_EDEFAULT;

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
	 * The default value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected static final String CODE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCode() <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCode()
	 * @generated
	 * @ordered
	 */
	protected String code = CODE_EDEFAULT;

	/**
	 * The default value of the '{@link #getParLevel() <em>Par Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParLevel()
	 * @generated
	 * @ordered
	 */
	protected static final int PAR_LEVEL_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getParLevel() <em>Par Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getParLevel()
	 * @generated
	 * @ordered
	 */
	protected int parLevel = PAR_LEVEL_EDEFAULT;

	/**
	 * This is true if the Par Level attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean parLevelESet;

	/**
	 * The default value of the '{@link #getPrice() <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrice()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal PRICE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPrice() <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrice()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal price = PRICE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLots() <em>Lots</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLots()
	 * @generated
	 * @ordered
	 */
	protected EList<StockLot> lots;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StockItemImpl()
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
		return ModelPackage.Literals.STOCK_ITEM;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_ITEM__ID, oldId, id));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_ITEM__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDevice()
	{
		return device;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDevice(String newDevice)
	{
		String oldDevice = device;
		device = newDevice;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_ITEM__DEVICE, oldDevice, device));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_ITEM__EQUIPMENT, oldEquipment, equipment));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCode()
	{
		return code;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCode(String newCode)
	{
		String oldCode = code;
		code = newCode;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_ITEM__CODE, oldCode, code));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getParLevel()
	{
		return parLevel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setParLevel(int newParLevel)
	{
		int oldParLevel = parLevel;
		parLevel = newParLevel;
		boolean oldParLevelESet = parLevelESet;
		parLevelESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_ITEM__PAR_LEVEL, oldParLevel, parLevel, !oldParLevelESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetParLevel()
	{
		int oldParLevel = parLevel;
		boolean oldParLevelESet = parLevelESet;
		parLevel = PAR_LEVEL_EDEFAULT;
		parLevelESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.STOCK_ITEM__PAR_LEVEL, oldParLevel, PAR_LEVEL_EDEFAULT, oldParLevelESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetParLevel()
	{
		return parLevelESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getPrice()
	{
		return price;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrice(BigDecimal newPrice)
	{
		BigDecimal oldPrice = price;
		price = newPrice;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_ITEM__PRICE, oldPrice, price));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StockLot> getLots()
	{
		if (lots == null)
		{
			lots = new EObjectContainmentEList<StockLot>(StockLot.class, this, ModelPackage.STOCK_ITEM__LOTS);
		}
		return lots;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs)
	{
		switch (featureID)
		{
			case ModelPackage.STOCK_ITEM__LOTS:
				return ((InternalEList<?>)getLots()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
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
			case ModelPackage.STOCK_ITEM__ID:
				return getId();
			case ModelPackage.STOCK_ITEM__NAME:
				return getName();
			case ModelPackage.STOCK_ITEM__DEVICE:
				return getDevice();
			case ModelPackage.STOCK_ITEM__EQUIPMENT:
				return getEquipment();
			case ModelPackage.STOCK_ITEM__CODE:
				return getCode();
			case ModelPackage.STOCK_ITEM__PAR_LEVEL:
				return getParLevel();
			case ModelPackage.STOCK_ITEM__PRICE:
				return getPrice();
			case ModelPackage.STOCK_ITEM__LOTS:
				return getLots();
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
			case ModelPackage.STOCK_ITEM__ID:
				setId((String)newValue);
				return;
			case ModelPackage.STOCK_ITEM__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.STOCK_ITEM__DEVICE:
				setDevice((String)newValue);
				return;
			case ModelPackage.STOCK_ITEM__EQUIPMENT:
				setEquipment((String)newValue);
				return;
			case ModelPackage.STOCK_ITEM__CODE:
				setCode((String)newValue);
				return;
			case ModelPackage.STOCK_ITEM__PAR_LEVEL:
				setParLevel((Integer)newValue);
				return;
			case ModelPackage.STOCK_ITEM__PRICE:
				setPrice((BigDecimal)newValue);
				return;
			case ModelPackage.STOCK_ITEM__LOTS:
				getLots().clear();
				getLots().addAll((Collection<? extends StockLot>)newValue);
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
			case ModelPackage.STOCK_ITEM__ID:
				setId(ID_EDEFAULT);
				return;
			case ModelPackage.STOCK_ITEM__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.STOCK_ITEM__DEVICE:
				setDevice(DEVICE_EDEFAULT);
				return;
			case ModelPackage.STOCK_ITEM__EQUIPMENT:
				setEquipment(EQUIPMENT_EDEFAULT);
				return;
			case ModelPackage.STOCK_ITEM__CODE:
				setCode(CODE_EDEFAULT);
				return;
			case ModelPackage.STOCK_ITEM__PAR_LEVEL:
				unsetParLevel();
				return;
			case ModelPackage.STOCK_ITEM__PRICE:
				setPrice(PRICE_EDEFAULT);
				return;
			case ModelPackage.STOCK_ITEM__LOTS:
				getLots().clear();
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
			case ModelPackage.STOCK_ITEM__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case ModelPackage.STOCK_ITEM__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.STOCK_ITEM__DEVICE:
				return DEVICE_EDEFAULT == null ? device != null : !DEVICE_EDEFAULT.equals(device);
			case ModelPackage.STOCK_ITEM__EQUIPMENT:
				return EQUIPMENT_EDEFAULT == null ? equipment != null : !EQUIPMENT_EDEFAULT.equals(equipment);
			case ModelPackage.STOCK_ITEM__CODE:
				return CODE_EDEFAULT == null ? code != null : !CODE_EDEFAULT.equals(code);
			case ModelPackage.STOCK_ITEM__PAR_LEVEL:
				return isSetParLevel();
			case ModelPackage.STOCK_ITEM__PRICE:
				return PRICE_EDEFAULT == null ? price != null : !PRICE_EDEFAULT.equals(price);
			case ModelPackage.STOCK_ITEM__LOTS:
				return lots != null && !lots.isEmpty();
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
		result.append(", device: ");
		result.append(device);
		result.append(", equipment: ");
		result.append(equipment);
		result.append(", code: ");
		result.append(code);
		result.append(", parLevel: ");
		if (parLevelESet) result.append(parLevel); else result.append("<unset>");
		result.append(", price: ");
		result.append(price);
		result.append(')');
		return result.toString();
	}

} //StockItemImpl
