/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.Balloon;
import org.ferrule.model.Claim;
import org.ferrule.model.Cutter;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Lumen;
import org.ferrule.model.Marker;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.ShaftSection;
import org.ferrule.model.Stent;
import org.ferrule.model.Transducer;
import org.ferrule.model.WireTraits;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Device Parts</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getMaker <em>Maker</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getModel <em>Model</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getSize <em>Size</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getEffectiveLength <em>Effective Length</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getTakesWire <em>Takes Wire</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getSections <em>Sections</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getLumens <em>Lumens</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getMarkers <em>Markers</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getBalloon <em>Balloon</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getStent <em>Stent</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getCutter <em>Cutter</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getTransducer <em>Transducer</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DevicePartsImpl#getClaims <em>Claims</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class DevicePartsImpl extends SourcedImpl implements DeviceParts
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
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final DeviceKind KIND_EDEFAULT = DeviceKind.OTHER;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected DeviceKind kind = KIND_EDEFAULT;

	/**
	 * This is true if the Kind attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean kindESet;

	/**
	 * The default value of the '{@link #getMaker() <em>Maker</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaker()
	 * @generated
	 * @ordered
	 */
	protected static final String MAKER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaker() <em>Maker</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaker()
	 * @generated
	 * @ordered
	 */
	protected String maker = MAKER_EDEFAULT;

	/**
	 * The default value of the '{@link #getModel() <em>Model</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getModel()
	 * @generated
	 * @ordered
	 */
	protected static final String MODEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getModel() <em>Model</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getModel()
	 * @generated
	 * @ordered
	 */
	protected String model = MODEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getSize() <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSize()
	 * @generated
	 * @ordered
	 */
	protected static final String SIZE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSize() <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSize()
	 * @generated
	 * @ordered
	 */
	protected String size = SIZE_EDEFAULT;

	/**
	 * The default value of the '{@link #getEffectiveLength() <em>Effective Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEffectiveLength()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension EFFECTIVE_LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEffectiveLength() <em>Effective Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEffectiveLength()
	 * @generated
	 * @ordered
	 */
	protected Dimension effectiveLength = EFFECTIVE_LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getTakesWire() <em>Takes Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTakesWire()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension TAKES_WIRE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTakesWire() <em>Takes Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTakesWire()
	 * @generated
	 * @ordered
	 */
	protected Dimension takesWire = TAKES_WIRE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSections() <em>Sections</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSections()
	 * @generated
	 * @ordered
	 */
	protected EList<ShaftSection> sections;

	/**
	 * The cached value of the '{@link #getLumens() <em>Lumens</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLumens()
	 * @generated
	 * @ordered
	 */
	protected EList<Lumen> lumens;

	/**
	 * The cached value of the '{@link #getMarkers() <em>Markers</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarkers()
	 * @generated
	 * @ordered
	 */
	protected EList<Marker> markers;

	/**
	 * The cached value of the '{@link #getBalloon() <em>Balloon</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBalloon()
	 * @generated
	 * @ordered
	 */
	protected Balloon balloon;

	/**
	 * The cached value of the '{@link #getStent() <em>Stent</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStent()
	 * @generated
	 * @ordered
	 */
	protected Stent stent;

	/**
	 * The cached value of the '{@link #getCutter() <em>Cutter</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCutter()
	 * @generated
	 * @ordered
	 */
	protected Cutter cutter;

	/**
	 * The cached value of the '{@link #getTransducer() <em>Transducer</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTransducer()
	 * @generated
	 * @ordered
	 */
	protected Transducer transducer;

	/**
	 * The cached value of the '{@link #getWire() <em>Wire</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWire()
	 * @generated
	 * @ordered
	 */
	protected WireTraits wire;

	/**
	 * The cached value of the '{@link #getClaims() <em>Claims</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClaims()
	 * @generated
	 * @ordered
	 */
	protected EList<Claim> claims;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected DevicePartsImpl()
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
		return ModelPackage.Literals.DEVICE_PARTS;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__ID, oldId, id));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DeviceKind getKind()
	{
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(DeviceKind newKind)
	{
		DeviceKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		boolean oldKindESet = kindESet;
		kindESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__KIND, oldKind, kind, !oldKindESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetKind()
	{
		DeviceKind oldKind = kind;
		boolean oldKindESet = kindESet;
		kind = KIND_EDEFAULT;
		kindESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.DEVICE_PARTS__KIND, oldKind, KIND_EDEFAULT, oldKindESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetKind()
	{
		return kindESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMaker()
	{
		return maker;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaker(String newMaker)
	{
		String oldMaker = maker;
		maker = newMaker;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__MAKER, oldMaker, maker));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getModel()
	{
		return model;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setModel(String newModel)
	{
		String oldModel = model;
		model = newModel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__MODEL, oldModel, model));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSize()
	{
		return size;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSize(String newSize)
	{
		String oldSize = size;
		size = newSize;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__SIZE, oldSize, size));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getEffectiveLength()
	{
		return effectiveLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEffectiveLength(Dimension newEffectiveLength)
	{
		Dimension oldEffectiveLength = effectiveLength;
		effectiveLength = newEffectiveLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__EFFECTIVE_LENGTH, oldEffectiveLength, effectiveLength));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getTakesWire()
	{
		return takesWire;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTakesWire(Dimension newTakesWire)
	{
		Dimension oldTakesWire = takesWire;
		takesWire = newTakesWire;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__TAKES_WIRE, oldTakesWire, takesWire));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ShaftSection> getSections()
	{
		if (sections == null)
		{
			sections = new EObjectContainmentEList<ShaftSection>(ShaftSection.class, this, ModelPackage.DEVICE_PARTS__SECTIONS);
		}
		return sections;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Lumen> getLumens()
	{
		if (lumens == null)
		{
			lumens = new EObjectContainmentEList<Lumen>(Lumen.class, this, ModelPackage.DEVICE_PARTS__LUMENS);
		}
		return lumens;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Marker> getMarkers()
	{
		if (markers == null)
		{
			markers = new EObjectContainmentEList<Marker>(Marker.class, this, ModelPackage.DEVICE_PARTS__MARKERS);
		}
		return markers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Balloon getBalloon()
	{
		return balloon;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetBalloon(Balloon newBalloon, NotificationChain msgs)
	{
		Balloon oldBalloon = balloon;
		balloon = newBalloon;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__BALLOON, oldBalloon, newBalloon);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBalloon(Balloon newBalloon)
	{
		if (newBalloon != balloon)
		{
			NotificationChain msgs = null;
			if (balloon != null)
				msgs = ((InternalEObject)balloon).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.DEVICE_PARTS__BALLOON, null, msgs);
			if (newBalloon != null)
				msgs = ((InternalEObject)newBalloon).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.DEVICE_PARTS__BALLOON, null, msgs);
			msgs = basicSetBalloon(newBalloon, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__BALLOON, newBalloon, newBalloon));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Stent getStent()
	{
		return stent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStent(Stent newStent, NotificationChain msgs)
	{
		Stent oldStent = stent;
		stent = newStent;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__STENT, oldStent, newStent);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStent(Stent newStent)
	{
		if (newStent != stent)
		{
			NotificationChain msgs = null;
			if (stent != null)
				msgs = ((InternalEObject)stent).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.DEVICE_PARTS__STENT, null, msgs);
			if (newStent != null)
				msgs = ((InternalEObject)newStent).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.DEVICE_PARTS__STENT, null, msgs);
			msgs = basicSetStent(newStent, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__STENT, newStent, newStent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Cutter getCutter()
	{
		return cutter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetCutter(Cutter newCutter, NotificationChain msgs)
	{
		Cutter oldCutter = cutter;
		cutter = newCutter;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__CUTTER, oldCutter, newCutter);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCutter(Cutter newCutter)
	{
		if (newCutter != cutter)
		{
			NotificationChain msgs = null;
			if (cutter != null)
				msgs = ((InternalEObject)cutter).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.DEVICE_PARTS__CUTTER, null, msgs);
			if (newCutter != null)
				msgs = ((InternalEObject)newCutter).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.DEVICE_PARTS__CUTTER, null, msgs);
			msgs = basicSetCutter(newCutter, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__CUTTER, newCutter, newCutter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Transducer getTransducer()
	{
		return transducer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetTransducer(Transducer newTransducer, NotificationChain msgs)
	{
		Transducer oldTransducer = transducer;
		transducer = newTransducer;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__TRANSDUCER, oldTransducer, newTransducer);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTransducer(Transducer newTransducer)
	{
		if (newTransducer != transducer)
		{
			NotificationChain msgs = null;
			if (transducer != null)
				msgs = ((InternalEObject)transducer).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.DEVICE_PARTS__TRANSDUCER, null, msgs);
			if (newTransducer != null)
				msgs = ((InternalEObject)newTransducer).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.DEVICE_PARTS__TRANSDUCER, null, msgs);
			msgs = basicSetTransducer(newTransducer, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__TRANSDUCER, newTransducer, newTransducer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WireTraits getWire()
	{
		return wire;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetWire(WireTraits newWire, NotificationChain msgs)
	{
		WireTraits oldWire = wire;
		wire = newWire;
		if (eNotificationRequired())
		{
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__WIRE, oldWire, newWire);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWire(WireTraits newWire)
	{
		if (newWire != wire)
		{
			NotificationChain msgs = null;
			if (wire != null)
				msgs = ((InternalEObject)wire).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.DEVICE_PARTS__WIRE, null, msgs);
			if (newWire != null)
				msgs = ((InternalEObject)newWire).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.DEVICE_PARTS__WIRE, null, msgs);
			msgs = basicSetWire(newWire, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DEVICE_PARTS__WIRE, newWire, newWire));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Claim> getClaims()
	{
		if (claims == null)
		{
			claims = new EObjectContainmentEList<Claim>(Claim.class, this, ModelPackage.DEVICE_PARTS__CLAIMS);
		}
		return claims;
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
			case ModelPackage.DEVICE_PARTS__SECTIONS:
				return ((InternalEList<?>)getSections()).basicRemove(otherEnd, msgs);
			case ModelPackage.DEVICE_PARTS__LUMENS:
				return ((InternalEList<?>)getLumens()).basicRemove(otherEnd, msgs);
			case ModelPackage.DEVICE_PARTS__MARKERS:
				return ((InternalEList<?>)getMarkers()).basicRemove(otherEnd, msgs);
			case ModelPackage.DEVICE_PARTS__BALLOON:
				return basicSetBalloon(null, msgs);
			case ModelPackage.DEVICE_PARTS__STENT:
				return basicSetStent(null, msgs);
			case ModelPackage.DEVICE_PARTS__CUTTER:
				return basicSetCutter(null, msgs);
			case ModelPackage.DEVICE_PARTS__TRANSDUCER:
				return basicSetTransducer(null, msgs);
			case ModelPackage.DEVICE_PARTS__WIRE:
				return basicSetWire(null, msgs);
			case ModelPackage.DEVICE_PARTS__CLAIMS:
				return ((InternalEList<?>)getClaims()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.DEVICE_PARTS__ID:
				return getId();
			case ModelPackage.DEVICE_PARTS__NAME:
				return getName();
			case ModelPackage.DEVICE_PARTS__KIND:
				return getKind();
			case ModelPackage.DEVICE_PARTS__MAKER:
				return getMaker();
			case ModelPackage.DEVICE_PARTS__MODEL:
				return getModel();
			case ModelPackage.DEVICE_PARTS__SIZE:
				return getSize();
			case ModelPackage.DEVICE_PARTS__EFFECTIVE_LENGTH:
				return getEffectiveLength();
			case ModelPackage.DEVICE_PARTS__TAKES_WIRE:
				return getTakesWire();
			case ModelPackage.DEVICE_PARTS__SECTIONS:
				return getSections();
			case ModelPackage.DEVICE_PARTS__LUMENS:
				return getLumens();
			case ModelPackage.DEVICE_PARTS__MARKERS:
				return getMarkers();
			case ModelPackage.DEVICE_PARTS__BALLOON:
				return getBalloon();
			case ModelPackage.DEVICE_PARTS__STENT:
				return getStent();
			case ModelPackage.DEVICE_PARTS__CUTTER:
				return getCutter();
			case ModelPackage.DEVICE_PARTS__TRANSDUCER:
				return getTransducer();
			case ModelPackage.DEVICE_PARTS__WIRE:
				return getWire();
			case ModelPackage.DEVICE_PARTS__CLAIMS:
				return getClaims();
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
			case ModelPackage.DEVICE_PARTS__ID:
				setId((String)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__KIND:
				setKind((DeviceKind)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__MAKER:
				setMaker((String)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__MODEL:
				setModel((String)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__SIZE:
				setSize((String)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__EFFECTIVE_LENGTH:
				setEffectiveLength((Dimension)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__TAKES_WIRE:
				setTakesWire((Dimension)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__SECTIONS:
				getSections().clear();
				getSections().addAll((Collection<? extends ShaftSection>)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__LUMENS:
				getLumens().clear();
				getLumens().addAll((Collection<? extends Lumen>)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__MARKERS:
				getMarkers().clear();
				getMarkers().addAll((Collection<? extends Marker>)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__BALLOON:
				setBalloon((Balloon)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__STENT:
				setStent((Stent)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__CUTTER:
				setCutter((Cutter)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__TRANSDUCER:
				setTransducer((Transducer)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__WIRE:
				setWire((WireTraits)newValue);
				return;
			case ModelPackage.DEVICE_PARTS__CLAIMS:
				getClaims().clear();
				getClaims().addAll((Collection<? extends Claim>)newValue);
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
			case ModelPackage.DEVICE_PARTS__ID:
				setId(ID_EDEFAULT);
				return;
			case ModelPackage.DEVICE_PARTS__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.DEVICE_PARTS__KIND:
				unsetKind();
				return;
			case ModelPackage.DEVICE_PARTS__MAKER:
				setMaker(MAKER_EDEFAULT);
				return;
			case ModelPackage.DEVICE_PARTS__MODEL:
				setModel(MODEL_EDEFAULT);
				return;
			case ModelPackage.DEVICE_PARTS__SIZE:
				setSize(SIZE_EDEFAULT);
				return;
			case ModelPackage.DEVICE_PARTS__EFFECTIVE_LENGTH:
				setEffectiveLength(EFFECTIVE_LENGTH_EDEFAULT);
				return;
			case ModelPackage.DEVICE_PARTS__TAKES_WIRE:
				setTakesWire(TAKES_WIRE_EDEFAULT);
				return;
			case ModelPackage.DEVICE_PARTS__SECTIONS:
				getSections().clear();
				return;
			case ModelPackage.DEVICE_PARTS__LUMENS:
				getLumens().clear();
				return;
			case ModelPackage.DEVICE_PARTS__MARKERS:
				getMarkers().clear();
				return;
			case ModelPackage.DEVICE_PARTS__BALLOON:
				setBalloon((Balloon)null);
				return;
			case ModelPackage.DEVICE_PARTS__STENT:
				setStent((Stent)null);
				return;
			case ModelPackage.DEVICE_PARTS__CUTTER:
				setCutter((Cutter)null);
				return;
			case ModelPackage.DEVICE_PARTS__TRANSDUCER:
				setTransducer((Transducer)null);
				return;
			case ModelPackage.DEVICE_PARTS__WIRE:
				setWire((WireTraits)null);
				return;
			case ModelPackage.DEVICE_PARTS__CLAIMS:
				getClaims().clear();
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
			case ModelPackage.DEVICE_PARTS__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case ModelPackage.DEVICE_PARTS__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.DEVICE_PARTS__KIND:
				return isSetKind();
			case ModelPackage.DEVICE_PARTS__MAKER:
				return MAKER_EDEFAULT == null ? maker != null : !MAKER_EDEFAULT.equals(maker);
			case ModelPackage.DEVICE_PARTS__MODEL:
				return MODEL_EDEFAULT == null ? model != null : !MODEL_EDEFAULT.equals(model);
			case ModelPackage.DEVICE_PARTS__SIZE:
				return SIZE_EDEFAULT == null ? size != null : !SIZE_EDEFAULT.equals(size);
			case ModelPackage.DEVICE_PARTS__EFFECTIVE_LENGTH:
				return EFFECTIVE_LENGTH_EDEFAULT == null ? effectiveLength != null : !EFFECTIVE_LENGTH_EDEFAULT.equals(effectiveLength);
			case ModelPackage.DEVICE_PARTS__TAKES_WIRE:
				return TAKES_WIRE_EDEFAULT == null ? takesWire != null : !TAKES_WIRE_EDEFAULT.equals(takesWire);
			case ModelPackage.DEVICE_PARTS__SECTIONS:
				return sections != null && !sections.isEmpty();
			case ModelPackage.DEVICE_PARTS__LUMENS:
				return lumens != null && !lumens.isEmpty();
			case ModelPackage.DEVICE_PARTS__MARKERS:
				return markers != null && !markers.isEmpty();
			case ModelPackage.DEVICE_PARTS__BALLOON:
				return balloon != null;
			case ModelPackage.DEVICE_PARTS__STENT:
				return stent != null;
			case ModelPackage.DEVICE_PARTS__CUTTER:
				return cutter != null;
			case ModelPackage.DEVICE_PARTS__TRANSDUCER:
				return transducer != null;
			case ModelPackage.DEVICE_PARTS__WIRE:
				return wire != null;
			case ModelPackage.DEVICE_PARTS__CLAIMS:
				return claims != null && !claims.isEmpty();
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
		result.append(", kind: ");
		if (kindESet) result.append(kind); else result.append("<unset>");
		result.append(", maker: ");
		result.append(maker);
		result.append(", model: ");
		result.append(model);
		result.append(", size: ");
		result.append(size);
		result.append(", effectiveLength: ");
		result.append(effectiveLength);
		result.append(", takesWire: ");
		result.append(takesWire);
		result.append(')');
		return result.toString();
	}

} //DevicePartsImpl
